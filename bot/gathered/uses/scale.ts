/** What `scale` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const scale = `
~ region

= scale {R} to {tins}[, loss {%}]<no_loss nothing_lost losing_nothing nothing_wasted no_waste don't_lose do_not_lose scrape*: , no loss><never don't_worry can't_wait: >
? nothing_lost no_loss nothing_wasted come_to should_come weigh* make making want wants need* how_much what_do fill* batch pour scale weights grams please pls i'd_like would_like could_you can_you amount* quantit* measure measures figures mass masses for
! cost* price* label* each_person workshop class people poured gave sold stock double melt* sticker* warm* hot survive* allergen* grain* how_many long take takes last keep post abroad

= scale {R} to {n} x {size}[, loss {%}]<no_loss nothing_lost losing_nothing nothing_wasted no_waste don't_lose do_not_lose scrape*: , no loss>
? weigh* amount* quantit* grams gram how_much_of what_goes goes_into goes_in need needs required fill filling tins jars pots tubes sticks scale holds hold go_in each_holds each
! between ± cost* price* label* workshop class course lesson teach* pupils students evening session melt* sticker* hot survive* allergen* long keep post abroad poured gave sold how_many_tins how_many_jars how_many_people how_many_will how_many_are how_many_did

= scale {R} to {g}<no_loss nothing_lost losing_nothing nothing_wasted no_waste don't_lose do_not_lose no_allowance without_loss: , no loss><send give post sell for_sale: >
? weigh* made make making batch want need* altogether total scale size mass masses component* amount* quantit* broken_down break_down divide* split like how_much everything each_thing only
! left remaining who_made who_poured cost* price* label* workshop class poured gave sold stock double melt* survive* allergen* jug

= scale {R} with my {g} of {i}<no_more: >
? have got only left use_up using from there's there_is remains remaining up
! cost* label* workshop instead swap*

= scale {R} to {g1}, to the nearest {g2}<reading: >
? with_scale with_a_scale with_my_scale nearest reading reads readab* resolution precision precise balance accurate
! cost* price* label* workshop sold

= {n} times {R}
? times
! cost* price* label* workshop how_many melt* poured

= double {R}
? double doubled doubling twice two_times two_lots two_batches twofold
! cost* price* label* workshop melt* poured sold

= triple {R}
? triple tripled treble thrice three_times three_batches three_lots
! cost* price* label* workshop melt* poured sold

= half of {R}
? half halve halved
! cost* price* label* workshop melt* poured sold swap instead vegan made full

= scale {R} to {tins}, to the nearest {g}
? nearest reading reads readab* resolution precision precise balance accurate only scales scale_only scale_shows scale_does
! cost* price* label* workshop sold

= what jug do I need for {tins} of {R}
? jug jugs pan saucepan pot_do beaker
? what which how_big big_enough size
! cost* price* label* workshop

= and for {n} tins
@ scale
? miscounted counted only there_are we_have got actually wrong turns_out them instead make_it
! balm salve people workshop class cost* price* gave sold poured

= and for {tins}
@ scale
? miscounted only actually wrong turns_out instead make_it what_if changed rather
! balm salve people workshop class cost* price* gave sold poured without

= and for {g}
@ scale
? better instead rather actually would_be make_it says enough
! balm salve people workshop class cost* price* gave sold poured without label* left bought got

= and at {size} each
@ scale
? tins jars pots tubes tubs turned_out hold holds
! balm salve people workshop class cost* price* gave sold poured without label*

= and with no loss
@ scale
? no_loss nothing_lost lose_nothing losing_nothing nothing_wasted no_waste don't_lose do_not_lose without_loss
! balm salve

= how much is the first pour for {tins} of {R}
? first_pour pour_first top_up top-up

= how much {i} if I scale {R} to {tins}
? how_much
! cost* price* label* workshop swap instead without no
`;
