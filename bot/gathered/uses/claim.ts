/** What `claim` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const claim = `
~ R size tins n g

= what can I say instead of "{q}"
? soften reword* rephrase* tone_down instead_of better_word* milder gentler another_way other_words in_place_of differently
! swap recipe

= can I say {q}[ in {region}]
? say* write* print* put claim* allowed may can okay ok fine word* line slogan* legal text sentence promise* accept* let lets allow* permit* mind object* trouble opinion* wording idea reword* medicinal
! notes fill_in rest instead in_place recipe

= and can I say {q}<instead rather not: >
@ claim
! answered replied asked she_said he_said

= and in {region}
@ claim

= what can I say instead<instead not: >
@ claim
? instead may_print may_say may_write can_print can_write allowed permitted reword* rephrase* better_word* other_words another_word* alternative* suggest*

= why<not: >
@ claim
? why how_come reason* explain
! is_the are_the do_the does_the
`;
