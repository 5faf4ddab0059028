/** What `ingredient` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const ingredient = `
~ region n

= density of {i}
? densit* dense specific_gravity heavy

= INCI name of {i}<label: >
? inci latin botanical_name label_name official_name ingredient_name

= shelf life of {i}<how_long long shelf why rancid order: >
? shelf_life keep* last lasts stay_good stays_good stay* good_for on_the_shelf go_off goes_off rancid stale stays_fresh stay_fresh spoil*
! recipe label batch lot shape balm made cool warm fridge

= iodine value of {i}
? iodine

= is {i} vegan<safe label sell allowed ok: >
? vegan* animal animals plant-based plant_based
! instead replac* without

= is {i} an allergen<why safe danger* label: >
? allergen* allergy allergies allergic nut nuts allergenic
! instead replac* free without

= what is {i} used for<why long: >
? used_for good_for use_for use_it_for do_with purpose uses what_do_people what_do_makers why_do_people why_do_makers what_job the_point_of balms_for
! instead

= what is {i}<never_come_across never_heard* never_seen never_met never_used label why: >
? what_is what's whats what_on_earth tell_me_about never_heard wonder know_about explain
! melt* cost* price* instead limit max* maximum without
`;
