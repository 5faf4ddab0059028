/** What `cost` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const cost = `
~ region

= what price for {R}, {tins}, for a margin of {%}
? margin profit markup keep earn charge ask sell price_card price_tag stays left_over leave* cost* price* should
! without no_margin loss lost spare waste spill*

= sell {R} at {n}, {tins}: what margin
? margin profit earn* keep left leaves gain* make_on make_anything worth pocket losing lose over_for_us
! without hours

= cost of {R} for {tins}[ with {n} hours of labour]
? cost* price* money spend* expens* dear charge pay come_to comes_to set_me_back set_us_back out_of_pocket budget outlay pounds euros quid
! sell margin profit swap instead workshop send post postage ship mail deliver*

= cost of {R} for {g}
? cost* price* money spend* expens* dear pay come_to comes_to set_me_back set_us_back out_of_pocket budget outlay pounds euros quid
! sell margin profit swap instead workshop send post postage ship mail deliver*

= cost of {R}
? cost* price* money spend* expens*
! sell margin profit swap instead missing cheap* history save

= which prices are missing for {R}
? missing lack* still_need yet unpriced not_have haven't
? price*

= what does {i} cost
? cost price
? do_we what which how_much paid
! swap instead cheap* R

= and for {tins}<not instead only: >
@ cost
! sell* margin profit

= with {n} hours of labour
@ cost
! drive drove travel* train wait*

= what margin at {n}
@ cost
? sell* charge* ask price profit margin left earn enough

= what should I sell at for a margin of {%}
@ cost
? margin profit keep earn charge sell* price gives left

= which prices are missing
@ cost
? missing lack* unpriced no_price
`;
