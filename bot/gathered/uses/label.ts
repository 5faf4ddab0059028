/** What `label` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const label = `
~

= which warnings go on the label of {R}[ in {region}]
? warning* caution*
? label* print* tin sticker* lid

= what is missing on the label of {R}
? missing
? label* sticker*

= ingredient list of {R}[ in {region}]
? ingredient_list ingredients_list list_of_ingredients inci ingredients declaration
! label warning* swap stock allergen*

= print labels for {R}, {tins}[, region {region}][, lot {lot}]<a4: on A4><letter: on Letter>
? label* sticker* lid_print*

= label for {R}[, {size}][, region {region}][, lot {lot}]<a4: on A4>
? label* sticker* print wording
! cost costs price allergen*
`;
