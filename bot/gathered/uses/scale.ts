/** What `scale` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const scale = `
~ region

= scale {R} to {tins}<no_loss nothing_lost scrape*: , no loss>
? weigh* make making want wants need* how_much how_many what_do fill* batch pour scale weights grams please pls i'd_like would_like could_you can_you amounts quantities measure measures figures
! cost* price* label* each_person workshop class people poured gave sold stock double melt* sticker* warm* hot survive* allergen* grain* send how_many long take takes last keep post abroad

= scale {R} to {g}<no_loss nothing_lost: , no loss>
? weigh* made make making batch want need* altogether total scale size
! cost* price* label* workshop class poured gave sold stock double melt* survive* allergen* jug

= scale {R} with my {g} of {i}
? have got only left use_up using
! cost* label* workshop
`;
