/** What `melt` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const melt = `
~ region size tins n

= how much of {R} is solid at {t}
? solid*
? how_much percent* share fraction

= will {R} survive {t}<forget* forgot leave leaves left who why than: >
? survive* cope* hold* stand* stay* melt* liquid runny soft* last travel* okay ok puddle solid keep* bear* take handle*
! swap instead design invent pour bath

= pour temperature for {R}
? pour pouring poured
? temperature hot warm degrees heat when

= bath temperature for {R}
? bath
? temperature hot warm degrees

= melt chart of {R}
? chart graph curve plot picture diagram

= in which order do I melt {R}
? order first
? melt* pot goes

= at what temperature does the scent go in {R}
? scent aroma fragrance essential_oil* smell
? when temperature degrees hot warm cool

= how do I keep {R} from going grainy
? grain* gritty sandy

= is {R} firm enough for a stick
? stick sticks
? firm* hard* soft* stand
! swap design make instead

= how firm is {R}
? firm* hard* soft*
? how
! swap make stick

= will {R} survive a hot pocket
? pocket* jeans handbag

= will {R} survive a parked car
? car dashboard glovebox van

= will {R} melt in the post<without_melting: >
? without_melting post posting parcel mail mailed mailing envelope be_posted
! arrived sent abroad

= will {R} survive summer
? summer beach heatwave
! design swap

= heat plan for {R}
? heat_plan melting_plan how_long_should_i_heat how_long_do_i_heat how_long_to_heat how_do_i_heat how_to_heat step_by_step steps how_do_i_melt how_to_melt

= when does {R} melt
? melt* soften* liquid* liquefy
! stick swap instead design pour workshop

= does {i} melt at {t}
? melt* liquid solid runny
! with

= melting point of {i}
? melt* liquid liquefy* solidif*
! vegan allergen instead
`;
