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
`;
