/** What `substitute` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const substitute = `
~ region

= swap {i1} for {i2} in {R}[ and make {tins}]
? swap* instead in_place replac* exchang* trade rather switch* stead* use_up don't_care_for don't_like not_keen_on do_not_care_for

= what can replace {i} in {R}, vegan
? replac* instead in_place substitut* alternative* stand-in similar run_out ran_out out_of
? vegan*

= what can replace {i} in {R}, nut-free
? replac* instead in_place substitut* alternative* stand-in similar run_out ran_out
? nut*
! peanut

= what can replace {i} in {R}
? replac* instead in_place substitut* alternative* stand-in stand_in similar like-for-like run_out ran_out out_of closest nearest
! vegan* nut nuts cheap* swap* what_about how_about

= what can replace {i}, vegan
? replac* instead in_place substitut* alternative* stand-in similar
? vegan*

= what can replace {i}
? replac* instead in_place substitut* alternative* stand-in stand_in similar like-for-like
! vegan* nut nuts cheap* swap* what_about how_about

= {R} without {i}[, {tins}]
? without leave_out no not

= make {R} vegan
? vegan* animal animals nothing_from_animals nothing_animal
! nut nuts palm check is_the

= nut-free {R}
? nut-free nut_free no_nuts without_nuts
! vegan
`;
