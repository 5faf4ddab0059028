import { cueWords } from './cues.ts';
import type { Item } from './item.ts';

/** Words that ask what heat does. */
export const strongCues =
  `melt melts melting melted melty molten survive survives surviving soft soften softens softening firm firmness slump slumps
  forecast chart pour pouring hold holds liquid runny car pocket handbag purse dashboard heatwave grainy graininess grain sandy gritty lumpy heating waterbath
  bain-marie boiler cooling mp fluid liquefy liquefies liquify liquified liquefied mush puddle goo sag sags sagging droop droops bain marie squishy squidgy mushy windowsill solids`.split(
    /\s+/,
  );
export const cues = [
  ...strongCues,
  ...`temperature temperatures temp add put take takes softer firmer hardness hard heat bath solid solids sweat sun hot warm summer set sets
  stiff order rewarm rewarming reheat reheating warming re-warm warmed cool cools cope copes bear stand sunny sunshine radiator poured degrees`.split(
    /\s+/,
  ),
];

/** Words around such a question that ask for nothing more. */
export const meltWords: ReadonlySet<string> = new Set([
  ...cues,
  ...`what whats what's when how which point temperature temperatures range degree degrees will would does stay stays staying fully completely
  many temp temps becomes become turns turn reach clear liquid purse state behaviour behavior wont won't doesn't mustn't should may even add go
  poured all plan purse for guide jacket trouser coat bag handbag at up down out to in of holiday heatwave day hold holds keep keeps its shape stand stands
  withstand take parked left inside dashboard beach room show curve graph picture diagram print see give tell happens happen it's should
  water jug need needs start starts begin begins long-time percent texture body can climate weather still enough and too over under above below
  before after goes go first last order put pot pan double instructions method safely gently properly quickly slowly fridge freezer overnight
  which or was were has have leave leaving post posted posting send sending mail mailed parcel van delivery ship shipping courier fat content against dose
  mine properly really off onto sunny windowsill radiator scent scents aroma aromas fragrance essential wax oil butter january february march april may june july
  august september october november december winter spring autumn abroad festival spain ok fine alright starts normal
  dark mode theme background light ingredients ingredient everything things doesn't dont don't not it'll so that while them cope come comes into if is are be get gets around c hard`.split(
    /\s+/,
  ),
]);

/** What is asked about the order of work, the pot and the pour: the heat plan comes first in the answer. */
const planAsked =
  /\b(?:heat(?:ing)? (?:plan|instructions?|schedule|steps?)|(?:water ?)?bath|bain[- ]marie|double boiler|pour\w*|order|steps?|(?:melt|go(?:es)?|add|put|start|first|last)\b.{0,40}\b(?:first|last)|what first|instructions|method|re-?(?:warm|heat)\w*|(?:warm|heat)\w* (?:it |this |that )?(?:up )?again|grain\w*|sandy|gritty|lumpy|(?:wax|butter|oil|shea)\b.{0,10}\bfirst|cooled|fridge|freezer|how (?:do|should|must|can|long) (?:i|we|you) (?:heat|melt|cool))\b/i;

export const asksForPlan = (text: string, atHeat: boolean): boolean =>
  planAsked.test(text) || asksWhenIn(text) || (!atHeat && /\bheat\b/i.test(text));

/** Words that ask what heat or time does to a recipe, where one is named. */
export const recipeCues =
  `behave behaves fare fares softer firmer harder hardness stiffer warm warms rewarm reheat set sets cool cools fresh aged hot hotter`.split(
    /\s+/,
  );

/** Words that elsewhere make it another request, and in a question of heat are how it is asked. */
const fineHere = new Set(
  `why which whether because than or not can't cant cannot won't wont isn't isnt doesn't doesnt don't dont didn't shouldn't wouldn't never post send
  harder softer firmer hotter better worse unless nothing where who whose ought weather safe safely survive survives sweat pocket order
  remind make makes made pour fill show course class people free change`.split(/\s+/),
);
/** What no forecast tells: how long it takes, what it smells or looks like. */
const untold = new Set(
  `long hours minutes microwave smell smells smelly smelled smelt taste tastes tasted colour color yellow mould mold mouldy burn burns burnt burned
  fire kg worth eat candle candles`.split(/\s+/),
);

/** A word that asks for something a forecast of heat is no answer to. */
export const asksElsewhere = ({ letter, word }: Item): boolean => {
  if (untold.has(word)) return true;
  return !fineHere.has(word) && !meltWords.has(word) && (letter === 'z' || cueWords.has(word));
};

/** "When should the scent go in for …?", "what goes in last": order and time in the pot. */
export const asksWhenIn = (text: string): boolean =>
  /\b(?:when|how (?:hot|warm|cool)|(?:what|which) temp\w*)\b.{0,40}\badd\b|\b(?:when|how (?:hot|warm|cool)|(?:what|which) temp\w*)\b.{0,50}\b(?:go|goes|stir|stirred|drip|dripped|drop|dropped|added|put|mix|mixed|tip|pour) (?:in|into|to|it in)\b|\b(?:what|which) temp\w*\b.{0,20}\b(?:stir|drip|drop|put|mix|tip)\b.{0,40}\b(?:in|into|to)\b|\b(?:goes|go|went|comes?) in(?:to)?\b.{0,20}\b(?:first|last)\b|\b(?:first|last) (?:in|into)\b.{0,10}\bpot\b/i.test(
    text,
  );

const wasPoured =
  /\b(?:have|has|had|did|was|were|'ve)\b(?: (?:we|i|you|they|ever|already|last|been|all|all this))*(?: [^,.;?]{1,60})? (?:pour|poured|made|make)\b|\bwe poured\b|\b(?:must|to|should) (?:re-?)?(?:order|buy)\b/i;
const ofHeat = /\bat\b|\bhot|\bwarm|\bcool|\btemp|\bdegree|°|\d ?[CF]\b|\bshould\b.{0,20}\b(?:be|have)\b/i;

/** What the forecast is not about: the first pour of a batch is weighed out, and what was poured is in the book. */
export const asksElse = (text: string): boolean =>
  (wasPoured.test(text) && !ofHeat.test(text)) ||
  /\b(?:inci|declaration|ingredients? list)\b/i.test(text) ||
  /\bin (?:grams?|g|kilos?|kg|ounces?|oz|ml|millilitres?|spoons?)\b|\bfirst pour\b|\btop(?:ping)?[- ]?up\b/i.test(
    text,
  );
