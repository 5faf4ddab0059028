/** What `workshop` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const workshop = `
~ region

= workshop for {n} people, {tins} each, {R}[, spare {%}]<a4: on A4>
? each every* per apiece head class workshop people participants students pupils guests course scouts teach* evening session group
! cost costs price label* child* kid kids in_all altogether total

= workshop for {n} people, 1 x {size} each, {R}[, spare {%}]
? each every* per apiece head
? class workshop people participants students pupils guests course teach* evening session group lesson
! cost costs price label* child* kid kids in_all altogether total

= workshop for {n} people, 1 x {size} each, {R}[, spare {%}]
? each every* per apiece head
! cost costs price label* child* kid kids in_all altogether total weigh* amounts quantities

= workshop for {n} children, {tins} each, {R}[, spare {%}]
= workshop for {n} children, 1 x {size} each, {R}[, spare {%}]
? child* kid kids
! cost costs price label*

= and for {n} people<not instead only cancel* after: >
@ workshop
! liked loved enjoyed followed voted watched laughed asked complained bought more another extra cancel* can't cannot fewer less tin tins jar jars pot pots stick sticks tube tubes

= and for {n} children<not instead only: >
@ workshop
? child* kid kids boys girls
! tin tins jar jars pot pots stick sticks tube tubes

= {n} hot plates<not instead only: >
@ workshop

= jugs of {v}<not instead only: >
@ workshop
? jug jugs pitcher* beaker*

= start at {n}<not instead only after before: >
@ workshop
? start* begin* open* from arrive* meet* doors kick_off

= spare {%}<not instead only more extra safe plan: >
@ workshop

= room {t}<not instead only: >
@ workshop

= and {tins} each<not instead only: >
@ workshop
! in_all altogether total cost* price*

= and for {R}<not instead only: >
@ workshop
! label* cost* price* melt* check swap scale

= shopping list<buy bought: >
@ workshop
? shopping buy bought purchase* basket trolley get_in shop

= handout
@ workshop
? handout give_out hand_out sheet_for page_for

= timeline
@ workshop
? timeline what_time done finished_by timetable schedule agenda how_long when times minute_by_minute do_what running_order
! shelf keep* expire* easter christmas

= what do I bring
@ workshop
? bring take_along carry pack equipment tools utensils

= kits for each person
@ workshop
? each_place every_place table_place place_setting each_seat in_front_of

= how many jugs
@ workshop
? jugs
? how_many
! what_is

= with children
@ workshop
? child* kid kids
! loved liked enjoyed were was did
`;
