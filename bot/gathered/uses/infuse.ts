/** What `infuse` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const infuse = `
~ region

= {tins} of {R}, oil infused {r} with {herb}
= {tins} of {R}, {oil} infused {r} with {herb}

= infuse {R} in {oil}[ at {r}]<cold no_heat without_heat without_any_heat without_warm* unheated windowsill: cold>
? infus* steep* macerat* soak* jar how_much_oil of_everything
! straight melt* balm tin tins

= infuse {g} of herbs, {herb1} and {herb2}, in {oil}[ at {r}]<cold no_heat without_heat without_any_heat without_warm* unheated windowsill: cold><infus* steep* macerat* soak* draw* brew* advise: >
? equal half_and_half half together altogether in_all mix* blend same_amount each_half
! straight melt* each

= how much oil comes out of {g1} {herb} in {g2} {oil}
? back comes_out come_out yield* left strain* recover* out remain* press* squeez* filter* decant* runs_through bottle_up drip*
! straight

= infuse {g1} {herb} in {g2} {oil}<cold cold_way no_heat without_heat without_any_heat without_warm* without_any_warm* no_warming unheated window_sill windowsill sunny_sill: cold><infus* steep* macerat* soak* draw* brew* advise: >
! straight melted melt got

= infuse {g1} {herb1} and {g2} {herb2} in {oil}[ at {r}]<cold no_heat without_heat without_any_heat without_warm* without_any_warm* no_warming unheated window_sill windowsill: cold><infus* steep* macerat* soak* draw* brew* advise: >
! straight

= how much {herb} for {g} infused {oil} at {r}
= how much {herb} for {g} infused {oil}
? finish* end_up ready strained want need of_infused end_with
? finish* end_up ready strained infused_oil of_infused end_with

= infuse {g} {herb} in {oil}[ at {r}]<cold no_heat without_heat without_any_heat without_warm* without_any_warm* no_warming unheated window_sill windowsill: cold><infus* steep* macerat* soak* draw* brew* advise: >
! straight finished

= how much {herb} for {g} {oil}[ at {r}]
= how much {herb} for {v} {oil}[ at {r}]
! straight finished

= infuse {herb} in {oil}[ at {r}]<cold no_heat without_heat without_any_heat without_warm* without_any_warm* no_warming unheated window_sill windowsill: cold>
? infus* steep* macerat* soak* draw* oil_with method make made making prepare* how_does_one how_do_i how_do_you how_do_we
! fresh straight

= infuse {aroma} in {oil}[ at {r}]<cold no_heat without_heat without_any_heat without_warm* without_any_warm* no_warming unheated window_sill windowsill: cold>
? make making made do_a prepare*
! drop drops essential melt* instead balm candle soap

= how much herb for {g} strained {aroma} in {oil} at {r}
? finish* end_up ready strained need want of_infused end_with made steeped

= how much {aroma} for {g} infused {oil} at {r}
? finish* end_up ready strained need want of_infused end_with
! drop drops essential melt* instead balm

= how much {i} for {g} infused {oil} at {r}
? finish* end_up ready strained need want of_infused end_with
! drop drops essential melt* instead balm

= how much oil does {g} {herb} keep back
? keep* stay* stuck drink* drank absorb* soak_up soaks_up suck* swallow* hold* lose* lost hang* cling*

= how long and how warm to infuse {herb}
? how_long hours days weeks temperature hot warm degrees
? oil infus* steep* macerat* soak* draw*
! fresh melt* flash* instead

= is fresh {herb} ok in infused oil
? fresh undried garden just_picked straight_from_the_plant
? oil infus* steep* macerat* soak*

= does {herb} have to be dry for infusing
? dry dried damp moist moisture wet wilted crisp bone_dry leathery brittle crackly
? oil infus* steep* macerat* soak* jar
! fresh

= and at {r}<no not sorry instead: >
@ infuse

= and in {oil}<no not sorry instead: >
@ infuse
! without cost* price* melt*

= and for {herb}<no not sorry instead: >
@ infuse
! lip lips safe without cost* price* melt*

= and for {g}<no not sorry instead only half: >
@ infuse
! got yield* came_out cost* price* melt*

= i got {g} out
@ infuse
? got yield* came_out strained pressed weighs
! how_much should will

= cold
@ infuse
? cold windowsill window_sill no_heat without_heat unheated without_warm* sun sunny
`;
