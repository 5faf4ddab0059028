/** What `design` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const design = `
~ region size tins n

= design a<vegan* nothing_from_animals nothing_animal no_animal plant-based: vegan><allergic_to_nuts nut_allerg* nut-allerg* no_nuts nut-free nut_free nut nuts without_nuts: nut-free><palm: palm-free> stick with {i1} and {i2}[ that survives {t}]<sell selling gift school who where send: >
= design a<vegan* nothing_from_animals nothing_animal no_animal plant-based: vegan><allergic_to_nuts nut_allerg* nut-allerg* no_nuts nut-free nut_free nut nuts without_nuts: nut-free><palm: palm-free> stick with {i}[ that survives {t}]<sell selling gift school who where send: >
= design a<vegan* nothing_from_animals nothing_animal no_animal plant-based: vegan><allergic_to_nuts nut_allerg* nut-allerg* no_nuts nut-free nut_free nut nuts without_nuts: nut-free><palm: palm-free> stick<heatwave hot_weather hot_day* summer: for hot weather>[ that survives {t}]<sell selling gift school who where send: >
? design* come_up invent* create* make_up make_me dream_up suggest* think_up new_recipe something_for something_in something_with something_out devise* work_out put_together brand_new new formulat* compose* build draw_up whip_up knock_up recipe_for looking_for from_scratch
? stick sticks
! without swap instead no_beeswax tin tins pot jar cost* price* label* weigh*

= design a<vegan* nothing_from_animals nothing_animal no_animal plant-based: vegan><allergic_to_nuts nut_allerg* nut-allerg* no_nuts nut-free nut_free nut nuts without_nuts: nut-free><palm: palm-free> tin balm with {i1} and {i2}[ that survives {t}]<sell selling gift school who where send: >
= design a<vegan* nothing_from_animals nothing_animal no_animal plant-based: vegan><allergic_to_nuts nut_allerg* nut-allerg* no_nuts nut-free nut_free nut nuts without_nuts: nut-free><palm: palm-free> tin balm with {i}[ that survives {t}]<sell selling gift school who where send: >
= design a<vegan* nothing_from_animals nothing_animal no_animal plant-based: vegan><allergic_to_nuts nut_allerg* nut-allerg* no_nuts nut-free nut_free nut nuts without_nuts: nut-free><palm: palm-free> tin balm<heatwave hot_weather hot_day* summer: for hot weather>[ that survives {t}]<sell selling gift school who where send: >
? design* come_up invent* create* make_up make_me dream_up suggest* think_up new_recipe something_for something_in something_with something_out devise* work_out put_together brand_new new formulat* compose* build draw_up whip_up knock_up recipe_for looking_for from_scratch
? tin tins pot pots jar jars
! without swap instead stick tube cost* price* label* weigh*

= design a<vegan* nothing_from_animals nothing_animal no_animal plant-based: vegan><allergic_to_nuts nut_allerg* nut-allerg* no_nuts nut-free nut_free nut nuts without_nuts: nut-free><palm: palm-free> tube balm with {i1} and {i2}[ that survives {t}]<sell selling gift school who where send: >
= design a<vegan* nothing_from_animals nothing_animal no_animal plant-based: vegan><allergic_to_nuts nut_allerg* nut-allerg* no_nuts nut-free nut_free nut nuts without_nuts: nut-free><palm: palm-free> tube balm with {i}[ that survives {t}]<sell selling gift school who where send: >
= design a<vegan* nothing_from_animals nothing_animal no_animal plant-based: vegan><allergic_to_nuts nut_allerg* nut-allerg* no_nuts nut-free nut_free nut nuts without_nuts: nut-free><palm: palm-free> tube balm<heatwave hot_weather hot_day* summer: for hot weather>[ that survives {t}]<sell selling gift school who where send: >
? design* come_up invent* create* make_up make_me dream_up suggest* think_up new_recipe something_for something_in something_with something_out devise* work_out put_together brand_new new formulat* compose* build draw_up whip_up knock_up recipe_for looking_for from_scratch
? tube tubes squeeze*
! without swap instead stick tin cost* price* label* weigh*
`;
