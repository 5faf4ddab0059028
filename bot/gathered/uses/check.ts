/** What `check` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const check = `
= is {%} {aroma} ok for children
? child* kid kids baby babies toddler* grandchild* year-old* little_ones pupils school*

= is {%} {aroma} ok in a lip balm
? ok okay allowed safe safely too_much too_high too_strong within limit limits fine right acceptable legal may can permitted over overdo* sensible
! instead replace

= how many drops of {aroma} for {g} at {%}
? drops

= how many drops of {aroma} may i put in {g}
? drops

= what is the maximum for {aroma} in lip balm
= what is the maximum for {aroma} in {region}
? maximum max most limit* how_high how_much upper highest cap ceiling allowed far strong*
! drops

= is {aroma} light sensitising
? sun* light* photo* uv
! lightest melt

= is {aroma} ok for children
? child* kid kids toddler* grandchild* year-old* little_ones pupils

= is {i} safe on lips
? lip lips mouth
? ok okay allowed safe can may fine right go goes belong* use suitable harm* poison* eat eaten lick* put near
! instead swap replace melt label

= is {R} ok for babies
? baby babies infant* newborn*

= is {R} ok for children
? child* kid kids toddler* grandchild* year-old* year_old little_ones
! workshop class print label*

= which allergens must I declare for {R}
= which allergens must be declared for {R} in {region}
? allergen*
! free nut-free

= does {R} contain nuts
? nut nuts
? contain* any in_it has have does
! free nut-free without no swap instead make made mustn't must_not

= is {R} light sensitising
? light-sensit* photo* sensitis* sensitiz* sunlight

= check {R}[ in {region}]
? check* safe okay ok allowed legal wrong warn* warning* limit limits rules comply complies compliant problem* all_right alright eye look_over cast_an_eye run_your_eye an_eye_over business acceptable worry worries concern* unsafe has_no_business nothing_in_it pass passes fit
! label* print cost costs melt melts survive survives stick swap instead price vegan stock pocket firm pour heat degrees hot post
`;
