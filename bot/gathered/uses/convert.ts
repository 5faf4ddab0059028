/** What `convert` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const convert = `
~ region R

= {v} {i} in g<never label recipe why poured_out poured: >
? gram grams weigh* weight grammes mass
! ml price cost oz ounce* tbsp cup cups drops

= {g} {i} in ml<never label why: >
? ml millilitre* milliliter* volume
! cost price tbsp spoon* cup cups

= {g} {i} in tbsp
? tbsp tablespoon*
! cost price

= {g} {i} in cups
? cup cups
! cost price

= {d} of {i} in ml
? ml millilitre* milliliter*
! cost price

= {d} of {i} in g
? gram grams weigh* weight grammes
! cost price ml

= {v} of {i} in drops
? drops

= {t} in C<never label why order: >
? celsius centigrade °c degrees_c in_c to_c into_c
! survive* hold hold_up stand cope melt_at melts_at does_it will_it

= {t} in F
? fahrenheit
? what_is_that what's_that what_is_it what_would_that in_fahrenheit
! survive* will_it does_it

= {t} in C
? celsius centigrade
? what_is_that what's_that what_is_it what_would_that in_celsius
! survive* will_it does_it

= {t} in F<never label why order: >
? fahrenheit °f degrees_f in_f to_f into_f
! survive* hold hold_up stand cope melt_at melts_at does_it will_it

= {v} in ml<never label why order: >
? millilitre* milliliter* ml
! of tin tins

= {v} in fl oz<never label why order: >
? fl_oz fluid_ounce*

= {v} in tsp
? tsp teaspoon*

= {v} in drops
? drops

= {g} in g<never label why order: >
? gram grams grammes metric
! of tin tins

= {g} in oz<never label why order: >
? oz ounce ounces
! lb lbs pound pounds of tin tins fl fluid

= {g} in lb<never label why order: >
? lb lbs pound pounds
! oz ounce ounces of tin tins cost price
`;
