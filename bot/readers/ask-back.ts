import { ingredientById } from '../../core/ingredients.ts';
import { nearNames } from '../../core/near-names.ts';
import type { Trouble } from '../answer.ts';
import { outsiderText } from '../words/outsiders.ts';
import type { Item } from './item.ts';

const nameOf = (id: string): string => ingredientById(id)?.name ?? id;

export const orList = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;

/** Longest stretch of a member's words that is said back to them. */
const longestEcho = 60;

export const echo = (said: string): string =>
  said.length > longestEcho ? `${said.slice(0, longestEcho)}…` : said;

/** A name that means several things: asked back about, never guessed. */
export const askWhich = ({ word, ingredients = [], because }: Item): Trouble => {
  const names = ingredients.map(nameOf);
  const choice =
    names.length > 1 ? `Did you mean ${orList(names)}?` : `Write "${names[0]}" if that is the one.`;
  return {
    code: 'unknown-ingredient',
    text: `"${echo(word)}" can mean more than one thing${because ? `: ${because}` : ''}. ${choice}`,
    open: { said: word, names },
  };
};

/** An ingredient nobody knows, with the nearest known names if there are any. */
export const unknownIngredient = (said: string): Trouble => {
  const outside = outsiderText(said);
  if (outside !== undefined)
    return {
      code: 'unknown-ingredient',
      text: `There is no "${echo(said)}" among my ingredients. ${outside}`,
    };
  const near = nearNames(said)
    .slice(0, 3)
    .map((match) => match.name);
  const hint =
    near.length > 0
      ? `Did you mean ${orList(near)}?`
      : 'I know the common oils, butters, waxes, herbs and essential oils, for example "sweet almond oil" or "Cera Alba".';
  return {
    code: 'unknown-ingredient',
    text: `I do not know the ingredient "${echo(said)}". ${hint}`,
    ...(near.length > 0 ? { open: { said, names: near } } : {}),
  };
};
