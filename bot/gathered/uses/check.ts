/** What `check` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const check = `
~ size tins n

= is {%} {aroma} ok for pregnant women
? pregnan* is_expecting are_expecting am_expecting expecting_a expectant mother-to-be mum-to-be

= is {%} {aroma} ok for children
? child* kid kids baby babies toddler* grandchild* year-old* year_old* little_ones little_one pupils school* nephew* niece* grandson* granddaughter* brownies cubs nursery

= is {d} of {aroma} in {g} ok
? ok okay allowed safe safely too_much too_strong over limit* fine right acceptable can may overdo* sensible all_right alright
! how_many instead

= is {%} {aroma} ok in a lip balm
? ok okay allowed safe safely too_much too_high too_strong within limit* fine right acceptable legal may can could permitted over overdo* sensible alright tolerable harm* dangerous strong yes_or_no go_wrong verdict
! instead replace

= how many drops of {aroma} for {g} at {%}
? drops

= how many drops of {aroma} may i put in {g}
? drops
! is_in weigh*

= what is the maximum for {aroma} in lip balm
= what is the maximum for {aroma} in {region}
? maximum max most limit* how_high how_much upper highest cap ceiling allowed far strong*
! drops

= is {aroma} ok for pregnant women
? pregnan* is_expecting are_expecting am_expecting expecting_a expectant mother-to-be mum-to-be

= is {aroma} light sensitising
? sun* light* photo* uv phototoxic beach outdoors
? go_together do_not_go_together don't_go_together sensit* burn* sun* light* photo* uv react* safe fine ok okay problem*
! lightest melt

= is {aroma} ok for children
? child* kid kids toddler* grandchild* year-old* year_old* little_ones little_one pupils nephew* niece* grandson* granddaughter* brownies cubs nursery

= is {i} safe on lips
? lip lips mouth
? ok okay allowed safe can may fine right go goes belong* use suitable harm* poison* eat eaten lick* put near
! instead swap replace melt label

= is {R} ok for babies
? baby babies infant* newborn* baby's months_old

= is {R} ok for pregnant women
? pregnan* is_expecting are_expecting am_expecting expecting_a expectant mother-to-be mum-to-be mothers-to-be mums-to-be

= is {R} ok for children
? is_one is_two is_three is_four is_five is_six is_seven is_eight is_nine is_ten is_only turns_one turns_two turns_three turns_four years_old aged
? use have wear put safe ok okay fine can may suitable all_right alright

= is {R} ok for children
? child* kid kids toddler* grandchild* year-old* year_old* little_ones little_one nephew* niece* grandson* granddaughter* brownies cubs nursery
! workshop class print label* made who who's which

= which allergens must I declare for {R}<sell* sold selling shop market fair stall: >
= which allergens must be declared for {R} in {region}
? allergen*
! free nut-free

= does {R} contain nuts<allerg*: >
? nut nuts
? contain* any in_it has have does
! free nut-free without no swap instead make made mustn't must_not

= is {R} light sensitising
? light-sensit* photo* sensitis* sensitiz* sunlight sunshine sun in_the_sun beach

= check {R}[ in {region}]<sell* sold selling shop market fair stall before: >
? check* safe okay ok allowed legal wrong warn* warning* limit limits rules comply complies compliant problem* all_right alright eye look_over cast_an_eye run_your_eye an_eye_over business acceptable worry worries worried concern* unsafe verify verif* inspect* examine* review* vet sanity objection* object once-over once_over harm* danger* forbidden prohibited legally passes go_over go_through run_through in_order mistake* not_allowed too_much too_strong anything_bad has_no_business nothing_in_it pass passes fit watch_out look_out beware
! label* print cost costs melt melts survive survives stick swap instead price vegan stock pocket firm pour heat degrees hot post

= and if only {%}<only instead less half not no: >
@ check
! melt* cost* price*

= and for babies
@ check
? baby babies infant* newborn*

= and for children
@ check
? child* kid kids toddler* year-old* little_ones

= and in {region}
@ check
! label* go going holiday live lives went visit*

= check {R}
@ check
! label* melt* cost* price* swap scale
`;
