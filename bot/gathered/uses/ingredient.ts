/** What `ingredient` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const ingredient = `
~ region n

= density of {i}
? densit* specific_gravity heavy

= INCI name of {i}
? inci latin botanical_name label_name

= shelf life of {i}
? shelf_life keep* last lasts go_off rancid stale
! recipe label

= iodine value of {i}
? iodine

= is {i} vegan
? vegan* animal animals
! instead replac*

= is {i} an allergen
? allergen* allergy allergic nut nuts
! instead replac* free

= what is {i} used for
? used_for good_for use_for do_with purpose

= what is {i}
? what_is what's whats what_on_earth tell_me_about never_heard
! melt* cost* price* instead limit max* maximum
`;
