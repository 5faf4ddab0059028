/** What `convert` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const convert = `
~ region R

= {v} {i} in g
? gram grams weigh* weight
! ml price cost

= {t} in C
? celsius centigrade

= {t} in F
? fahrenheit

= {v} in ml
? millilitre* milliliter* ml
! of tin tins
`;
