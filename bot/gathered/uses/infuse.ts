/** What `infuse` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const infuse = `
~ region

= {tins} of {R}, oil infused {r} with {herb}

= how much oil comes out of {g1} {herb} in {g2} {oil}
? back comes_out come_out yield* left strain* recover* out
! straight

= infuse {g1} {herb} in {g2} {oil}<cold cold_way no_heat windowsill: cold>
! straight melted melt got

= infuse {g1} {herb1} and {g2} {herb2} in {oil}[ at {r}]<cold no_heat windowsill: cold>
! straight

= how much {herb} for {g} infused {oil} at {r}
= how much {herb} for {g} infused {oil}
? finish* end_up ready strained want need of_infused end_with
? finish* end_up ready strained infused_oil of_infused end_with

= infuse {g} {herb} in {oil}[ at {r}]<cold no_heat windowsill: cold>
! straight finished

= how much {herb} for {g} {oil}[ at {r}]
= how much {herb} for {v} {oil}[ at {r}]
! straight finished

= infuse {herb} in {oil}[ at {r}]<cold no_heat windowsill: cold>
? infus* steep* macerat* soak* draw* oil_with
! fresh straight
`;
