/** What is asked of the bench book by the things in a message; bot/gathered/use.ts says how this is written. */
export const book = `
~ region

= reactions for {lot}
? reaction* rash* itch* complain* complaint*
? which any list show what has have had did is are
! after report

= recall {lot}
? recall* call_back call_in take_back get_back

= history of {lot}
? history who_changed who_touched changes what_happened who_wrote

= when does {lot} expire
? expire* expiry best_before use_by use-by go_off goes_off good_until good_till out_of_date keep* run_out
! correct change should is_wrong move

= how much of {lot} is left
? left remaining remains remain still_have still_got
? how_much how_many what is_there
! out who whom where

= trace {lot}
? where who whom trace* track* follow which went gone end_up ended_up go_into went_into used_in used_for
! left expire* bought poured_today gave_away history reaction*

= how many tins of {R} are left
? left remaining still_have still_got unsold
? how_many what

= list batches of {R}
? batches pours pouring batch
? which list show what all when ever
! poured_today label* cost* expire* did get got gave given sold

= who changed {R}
? who_changed who_touched who_edited who_altered who_wrote
`;
