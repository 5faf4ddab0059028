/** What `cost` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const cost = `
~ region

= what price for {R}, {tins}, for a margin of {%}
? margin profit markup

= cost of {R} for {tins}[ with {n} hours of labour]
? cost* price* money spend* expens* charge pay come_to pounds euros quid
! sell margin profit swap instead workshop

= cost of {R} for {g}
? cost* price* money spend* expens* pay
! sell margin profit swap instead workshop

= cost of {R}
? cost* price* money spend* expens*
! sell margin profit swap instead missing cheap* history save

= which prices are missing for {R}
? missing lack*
? price*

= what does {i} cost
? cost price
? do_we what which how_much paid
! swap instead cheap* R
`;
