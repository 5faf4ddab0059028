/** Little words, and words of lips and healing, that show a wording to be German, French, Spanish, Italian, Dutch or Portuguese. */
const telling = new Set(
  `der die das und für gegen mit nicht ist bei zur zum hilft heilt pflegt lippen haut trockene rissige schützt lindert
  le la les un une et pour contre avec des du aux est lèvres levres peau guérit guerit soigne apaise gercées protège
  el los las y para con contra del es labios piel cura sana alivia protege calma
  il lo gli e per con della delle labbra pelle guarisce lenisce cura
  de het een en voor tegen met lippen huid geneest helpt
  o os as e para lábios labios pele cura`.split(/\s+/),
);

/** Words that are English too; alone they show nothing. */
const shared = new Set(
  'die a y e o as con per met de la le en il lo du des is un es os balm lip care'.split(' '),
);

const foreignLetters = /[äöüßñçœłšžčřåøæãõ\u0370-\u1fff\u2e80-\uffdc]/;

/** Words borrowed whole, with their accents. */
const borrowed = /(?<![a-z])(?:cafés?|crème|brûlée|façade|fête|rosé|crêpe)(?![a-z])/g;

/** True for a wording that is not English, as far as two telling words or letters show. */
export const isForeign = (plain: string): boolean => {
  const text = plain.replace(borrowed, '');
  const words = text.match(/[\p{L}]+/gu) ?? [];
  const sure = words.filter((word) => telling.has(word) && !shared.has(word)).length;
  const maybe = words.filter((word) => shared.has(word)).length;
  return foreignLetters.test(text) || sure > 1 || (sure === 1 && (maybe > 0 || words.length < 3));
};
