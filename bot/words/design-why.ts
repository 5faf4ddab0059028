import type { Proposal } from '../../core/design/design.ts';
import { ingredientById } from '../../core/ingredients.ts';
import { shortName } from './warnings.ts';

/** What each wax is chosen for: common knowledge of the trade, without a source. */
const waxWords: Readonly<Record<string, string>> = {
  beeswax: 'easy to pour, forgives a slow stir',
  'beeswax-white': 'easy to pour, and pale',
  'candelilla-wax': 'vegan and glossy, strong for its weight',
  'sunflower-wax': 'vegan; a little holds much oil, hardly softer in the heat',
  'rice-bran-wax': 'vegan, creamy, keeps firm in the heat',
  'carnauba-wax': 'vegan; melts last of all waxes',
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const short = (id: string): string => shortName(id).replace(/ (wax|butter|oil)$/, '');

const waxesOf = ({ lines }: Proposal): readonly string[] =>
  lines
    .filter(({ ingredient }) => ingredientById(ingredient)?.kind === 'wax')
    .map(({ ingredient }) => ingredient);

const buttersOf = ({ lines }: Proposal): readonly string[] =>
  lines
    .filter(({ ingredient }) => ingredientById(ingredient)?.kind === 'butter')
    .map(({ ingredient }) => ingredient);

/** A name for a proposal from what carries it: "candelilla and shea". */
export const nameOf = (proposal: Proposal): string => {
  const [main, ...others] = [...waxesOf(proposal), ...buttersOf(proposal)].map(short);
  const list = [main ?? short(proposal.main), ...others];
  const name = list.length > 1 ? `${list.slice(0, -1).join(', ')} and ${list.at(-1)}` : (list[0] ?? '');
  return capital(name);
};

const keepsText = ({ keeps }: Proposal): string =>
  keeps ? ` Keeps about ${keeps.months} months (${shortName(keeps.ingredient)}).` : '';

/** What carries it and why that, in a few words: "Candelilla: vegan and glossy". */
export const mainOf = (proposal: Proposal): string =>
  `${capital(short(proposal.main))}: ${waxWords[proposal.main] ?? 'no wax, soft on a hot day'}.`;

/** What carries it, and whether heat asked for more. */
const carriesOf = (proposal: Proposal): string => {
  const main = waxWords[proposal.main] ?? `no wax: ${shortName(proposal.main)} carries it, soft on a hot day`;
  const heat = proposal.forHeat ? '; extra wax for the heat' : '';
  return `${main}${heat}.`;
};

/** Why this one was chosen: what carries it, whether heat asked for more, and what keeps shortest. */
export const whyOf = (proposal: Proposal): string => `${capital(carriesOf(proposal))}${keepsText(proposal)}`;
