/** What `substitute` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const substitute = `
~ region

= swap {i1} for {i2} in {R}[ and make {tins}]<not_use not_using not_want don't_use don't_want: >
? swap* instead in_place the_place_of replac* exchang* trade rather switch* stead* use_up don't_care_for don't_like not_keen_on do_not_care_for take_out where use_it prefer* not ditch* scrap* dump* chuck*
! half some is_it poured

= swap half the {i1} for {i2} in {R}
? swap* instead in_place the_place_of replac* exchang* trade rather switch* stead* half_and_half half_n_half fifty_fifty should_be become* turn_into make_it
? half_and_half half_n_half half fifty_fifty
! all

= swap {%} of the {i1} for {i2} in {R}
? swap* instead in_place the_place_of replac* exchang* trade rather switch* change* should_be become* turn_into

= bee-free {R}<minus except: >
? nothing_from_bees no_bee bee bees bee-free
! vegan check contain*

= what can replace {i} in {R}, vegan
? replac* instead in_place place_of substitut* alternative* stand-in stand_in similar run_out ran_out out_of something_else
? vegan*
! nut nuts

= what can replace {i} in {R}, nut-free
? replac* instead in_place place_of substitut* alternative* stand-in stand_in similar run_out ran_out something_else
? nut*
! peanut vegan*

= what can replace {i} in {R}<had_no has_no have_no there_is_no there's_no got_no is_no can't_stand cannot_stand can't_get cannot_get couldn't_get allergic_to hates expensive never_again not_have don't_have didn't_have doesn't_have not_have than: >
? replac* instead in_place place_of substitut* alternative* stand-in stand_in similar like-for-like run_out ran_out out_of closest nearest the_job_of what_else something_else anything_else another_one
! vegan* nut nuts cheap* swap* what_about how_about put got_out_of come_out_of came_out_of get_out_of

= what can replace {i}, vegan
? replac* instead in_place place_of substitut* alternative* stand-in stand_in similar
? vegan*
! nut nuts

= what can replace {i}, nut-free
? replac* instead in_place place_of substitut* alternative* stand-in stand_in similar
? nut nuts nut-free nut_free
! vegan*

= what can replace {i}<had_no has_no have_no there_is_no there's_no got_no is_no can't_stand cannot_stand can't_get cannot_get couldn't_get allergic_to hates expensive not_have don't_have didn't_have doesn't_have than: >
? replac* instead in_place place_of substitut* alternative* stand-in stand_in similar like-for-like something_like is_like are_like most_like works_like close_to
? what what's which anything something another instead_of in_place_of alternative* substitut* replac* similar like-for-like stand-in stand_in stands_in
! vegan* nut nuts cheap* swap* what_about how_about put

= cheapest instead of {i} in {R}<than: >
? cheap* affordable less_expensive save_money
? replac* instead in_place place_of substitut* alternative* cheaper_than anything something
! swap

= {R} without {i}[, {tins}]
? without leave_out leave no not
! how_much how_many instead else another

= vegan {R}
? is are does contain* okay ok suitable right good
? vegan*
! nut nuts palm check make makes made version become turn* need* stick tin

= make {R} vegan
? make makes made version become* turn* need* want* like would could can without no suit* nothing possible look* rework* change* adapt* has_to should eats gone for
? vegan* animal animals nothing_from_animals nothing_animal plant-based
! nut nuts palm check is_the

= nut-free {R}<safe who must_not mustn't so_that allergic allergy allergies children child kids school: >
? nut-free nut_free no_nuts without_nuts nut nuts
? rework* make made version become without no free adapt* change*
! vegan contain* check label* ok okay

= palm-free {R}
? palm
? rework* make made version become without no free adapt* change*
! vegan nut nuts contain*

= unscented {R}
? unscented scent* fragrance* perfume* smell*
? without no free un* leave_out
! nut nuts vegan melt when
`;
