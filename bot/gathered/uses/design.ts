/** What `design` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const design = `
~ region size tins n

= design a<vegan* nothing_from_animals: vegan><allergic_to_nuts nut_allerg* no_nuts nut-free nut nuts: nut-free><palm: palm-free> stick<heatwave hot_weather hot_day*: for hot weather> with {i1} and {i2}[ that survives {t}]
= design a<vegan* nothing_from_animals: vegan><allergic_to_nuts nut_allerg* no_nuts nut-free nut nuts: nut-free><palm: palm-free> stick with {i}[ that survives {t}]
= design a<vegan* nothing_from_animals: vegan><allergic_to_nuts nut_allerg* no_nuts nut-free nut nuts: nut-free><palm: palm-free> stick[ that survives {t}]
? design* come_up invent* create* make_up dream_up suggest* think_up new_recipe something_for something_in something_with something_out devise* work_out put_together
? stick sticks
! without swap instead no_beeswax tin tins pot jar

= design a<vegan* nothing_from_animals: vegan><allergic_to_nuts nut_allerg* no_nuts nut-free nut nuts: nut-free><palm: palm-free> tin balm with {i1} and {i2}[ that survives {t}]
= design a<vegan* nothing_from_animals: vegan><allergic_to_nuts nut_allerg* no_nuts nut-free nut nuts: nut-free><palm: palm-free> tin balm with {i}[ that survives {t}]
= design a<vegan* nothing_from_animals: vegan><allergic_to_nuts nut_allerg* no_nuts nut-free nut nuts: nut-free><palm: palm-free> tin balm[ that survives {t}]
? design* come_up invent* create* make_up dream_up suggest* think_up new_recipe something_for something_in something_with something_out devise* work_out put_together
? tin tins pot pots jar jars
! without swap instead stick tube
`;
