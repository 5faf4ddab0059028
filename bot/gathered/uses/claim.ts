/** What `claim` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const claim = `
~ R size tins n g

= can I say {q}[ in {region}]
? say* write* print* put claim* allowed may can okay ok fine word* line slogan* legal text sentence promise* accept* let lets allow* permit* mind object* trouble opinion* wording idea reword* medicinal sold
! notes fill_in rest instead in_place recipe
`;
