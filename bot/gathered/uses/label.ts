/** What `label` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const label = `
~

= net weight in ounces on the label for {R}, {size}
? ounces ounce oz
? net weight weigh* contents

= round labels {n} mm for {R}
? mm millimetre* millimeter*
? round lid lids circle* diameter across
! high tall wide side strip

= which warnings go on the label of {R}[ in {region}]<sell* sold selling shop market fair stall: >
? warning* caution*
? label* print* tin sticker* lid

= what is missing on the label of {R}
? missing lacking or_is_something finished complete not_filled not_yet lack* incomplete gap gaps forgot* forget still_open unfinished blank*
? label* sticker*

= ingredient list of {R}[ in {region}]
? ingredient_list ingredients_list list_of_ingredients inci ingredients declaration
! label warning* swap stock allergen*

= what must be on the label of {R}[ in {region}]<sell* sold selling shop market fair stall: >
? must should supposed ought want* has_to have_to needs_to need required obliged obligatory compulsory mandatory law
? appear stand* print* on_it on_a_tin on_a_pot on_a_jar write_on put_on on_the on_them label* sticker*
! warning* caution* ingredient* buy weigh* pour melt* cost* price*

= print labels for {R}, {tins}[, region {region}][, lot {lot}]<a4: on A4><sell* sold selling shop market fair stall: ><letter: on Letter>
? label* sticker* lid_print* print printed
! handout plan chart recipe timeline shopping price* cost*

= label for {R}[, {size}][, region {region}][, lot {lot}]<a4: on A4><sell* sold selling shop market fair stall: >
? label* sticker* print wording etikett etiquette etiqueta tag tags
! cost costs price allergen*

= and for {region}<instead not: >
@ label
! go going holiday live lives went visit*

= on A4<not_letter instead_of_letter rather_than_letter: >
@ label
? a4

= on Letter<not_a4 instead_of_a4 rather_than_a4: >
@ label
? letter american_paper us_paper

= lids of {n} mm
@ label

= and for {tins}<not instead only: >
@ label
! cost* price* melt*

= make it {g}<not no instead only: >
@ label
! cost* price* melt* scale

= same for {R}
@ label
! cost* price* melt* scale swap check

= what is missing on the label
@ label
? missing lack* incomplete gaps forgot* forget still_need still_open
`;
