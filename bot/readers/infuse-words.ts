import type { Trouble } from '../answer.ts';

export const infuseExample = 'infuse 40 g dried calendula in sunflower oil';

/** Doing it: a message with one of these is about an infusion. */
export const infuseVerbs =
  'infuse infuses infusing steep steeps steeping macerate macerates macerating soak soaking'.split(' ');
/** What it makes: also part of an ingredient's name ("calendula infused olive oil"). */
export const infuseNouns = 'infused infusion infusions steeped macerated maceration macerate'.split(' ');

/** Words around such a request that ask for nothing more. */
export const infuseWords = new Set([
  ...infuseVerbs,
  ...infuseNouns,
  ...`how much many what whats what's which ratio ratios proportion proportions by weight weights volume oil oils herb herbs dried dry fresh
  freshly picked garden wilted home-grown homegrown grown flowers flower petals petal leaves leaf heads buds root organic whole chopped crumbled cut crushed out left end ends
  up yield yields yielded finish finished final result results come comes came gave gives gave weigh weighed weighs straining strain strained after
  before once long time times temperature temp hot hotter heat heated heating warm warmly cold slow slowly cool jar jars way method methods bath
  water-bath bain marie solar sun sunny window windowsill cupboard dark double boiler cooker crock crockpot crock-pot low oven hour hours hr hrs day days week weeks month months straight directly direct melted melt molten mass pot
  mixture balm into through cloth muslin then start begin enough ounces grams gram make making makes made do go set aside put add using use used
  used-up keep keeps kept absorb absorbs absorbed lose loses lost soaks press pressed squeezed only when should may work out carrier base whatever some
  same instead back change prepare preparing produce prepared strength strong stronger weak weaker usual standard best it's should it get now
  tell show calculate skin hand lips lip first last time today yesterday already just finally ended cold-infused cold-infuse same but not don't measured worth per part parts batch tins recipe
  cover covers covered need needs needed or not why solar sunlight sort kind turn into creating create blossoms plants plant herbs is i my have had
  goes go pour poured over them all total inside everything leafs flower buds bud tops sprigs per percent both half equal equally mix mixed blend blended together long sit sits stand stands leave sitting standing bag bags packet bunch sack bowl wait nearly rather try filter filtered squeeze squeezed pressing was were had together friends takes take result fine swap replace substitute left should does do per strained can could`.split(
    /\s+/,
  ),
]);

const missing = (text: string): Trouble => ({ code: 'missing', text });

export const noAmount = missing(
  `How much? Give the herb, the oil or the infused oil you want, for example "${infuseExample}" or "how much oil for 300 g infused oil at 1:8".`,
);
export const noHerbKnown = missing(
  `Which herb? Name it, for example "${infuseExample}": herbs keep different amounts of oil.`,
);
export const oneHerb: Trouble = {
  code: 'bad-quantity',
  text: `One herb and one oil at a time, please: herbs keep different amounts of oil. For example "${infuseExample}".`,
};
export const oneHerbYield: Trouble = {
  code: 'bad-quantity',
  text: 'A yield of several herbs tells nothing of each, so I note none. Weigh one herb by itself, for example "I got 260 g out of 40 g calendula in 320 g sunflower oil".',
};
export const notInOil: Trouble = {
  code: 'not-allowed',
  text: `I know infusions in oil only: water, vinegar and alcohol have no place in a balm without water. For example "${infuseExample}".`,
};
export const forFood: Trouble = {
  code: 'not-allowed',
  text: `I only make oils for balms. As food, fresh garlic or fresh herbs in oil can breed botulism without any smell: keep such oil cold and use it within a week (Health Canada). A herb oil for balm: "${infuseExample}".`,
};
export const herbByVolume: Trouble = {
  code: 'bad-quantity',
  text: `Cups of herb weigh anything from a little to a lot. Weigh it and give grams, for example "${infuseExample}".`,
};
export const ratioOfTwo: Trouble = {
  code: 'bad-quantity',
  text: 'The ratio is dried herb to oil by weight, two numbers, for example "1:8".',
};
export const yieldOf = missing(
  'What went in? Say it with the yield, for example "I got 260 g out of 40 g calendula in 320 g sunflower oil".',
);

export const foodWords =
  /\b(?:cook|cooking|eat|eating|edible|salad|food|(?<!(?:flowers?|petals?|herbs?|leaves|plants?|it|they|them|heads|buds|calendula|chamomile|lavender|comfrey|plantain|arnica)(?: will| would| do| does| to)? )drink|pasta|dressing|dip|pizza|bread|culinary|garlic|chill?i(?:es)?|onions?)\b/i;
export const otherLiquids =
  /\b(?:(?<!how (?:hot|warm) (?:should|must|does|is|may) (?:the|my) )water(?!\W*bath)|vodka|alcohol|ethanol|spirit|rum|gin|brandy|vinegar|glycerine?|(?<!green )tea(?! tree)|milk|wine|everclear)\b/i;
