import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import type { Item } from './item.ts';

export const costExample = 'cost of Fernlea hand balm for 24 tins of 15 ml';
export const priceExample = 'shea costs 18 per kg, beeswax 500 g 14.50, tins are 0.35 each';

export const costCues =
  'cost costs costing costings price prices priced pricing pricey expensive dear dearer money spend spending spent budget expense expenses'.split(
    ' ',
  );
/** Paying for something asks for its price; alone it is too little to be about a batch. */
export const payCues = 'pay pays paid paying'.split(' ');
export const labourCues = 'labour labor wage wages hourly'.split(' ');
export const sellCues =
  'sell sells selling sold charge charging ask margin margins markup profit profits profitable retail rrp earn earns break even lowest'.split(
    ' ',
  );

/** Words around a price that ask for nothing more. */
export const priceWords = new Set([
  ...costCues,
  ...`per each a an one pack packs packet packets bag bags of pay paid pays paying is are at now new note noted for in it its set update incl including
  inclusive included excl excluding exclusive plus with without vat tax gst before after net gross eur euro euros gbp usd cad aud chf quid sterling dollar dollars
  cent cents ct cts p pence penny pennies pound pounds kilo litre gram we get got apiece ea tub tubs tubes bottle bottles jug jugs sack sacks block blocks
  update updated list remember record unit units piece pieces pcs pc dried empty delivery save went gone up down rose fell cost's ex lid lids label labels sticker stickers seal seals sleeve sleeves was were did do does how much what that they them
  supplier suppliers shop store trader wholesaler charge charges charging wants want asks ask buy buys buying bought sells selling become became come comes came dropped drop rose risen fallen increased
  more less higher lower cheaper up down box boxes sheet sheets roll rolls carton cartons case cases tray trays bundle bundles these following as it's by order ordered currently current present latest keep found write assume today costing on moment invoice invoices says quote quoted bill bills receipt receipts reads wrote told`.split(
    /\s+/,
  ),
]);

/** Words around the cost of a batch that ask for nothing more. */
export const batchCostWords = new Set([
  ...costCues,
  ...labourCues,
  ...sellCues,
  ...`how much many what whats what's is are to make making made per each tin tins jar container containers batch total totals work out worth
  come comes up calculate for if when at it them one with and of the all in ingredient ingredients material materials need do does us each
  would should hour hours hr hrs h minute minutes min mins takes take taking took plus per then that's same about instead but swap then breakdown break down what'd sold price including incl
  everything whole altogether me if i we make making just got will would set back run damage pay pour pouring poured when its included fill fills filling melt melts mix mixed use using made out fork sum up goes go into us ourselves sale sales lot which gives give break even at least lowest charge ask asks keep made fair good enough pls expensive only apiece ea only list go buy spend time left after profitable ask asking leave leaves`.split(
    /\s+/,
  ),
]);

/** Words around a price list that ask for nothing more. */
export const listWords = new Set([
  ...costCues,
  ...`list lists pricelist show see what what's whats which are is our the my all me us current can could you i we get give do does have got has noted note saved save known know
  told tell said put down up so far for as of in it that them every everything there book wrote written entered recorded kept keep look at remember remind`.split(
    /\s+/,
  ),
]);

const missing = (text: string): Trouble => ({ code: 'missing', text });

export const risenBy = missing(
  'By how much a price went up or down is not enough for me: say what it costs now, for example "shea costs 18 per kg".',
);

export const noBatch = missing(
  `The cost of what? Name a recipe and how much to make, for example "${costExample}".`,
);
export const howMuch = missing(`For how much? For example "${costExample}" or "… for 500 g".`);
export const noSellBatch = missing(
  `A margin on what? Ask for the cost first, for example "${costExample}", then "sell at 6.50: what margin".`,
);
export const noMoney = missing(`What does it cost, and for how much? For example "${priceExample}".`);
export const noPack: (what: string) => Trouble = (what) =>
  missing(`For how much ${what}? A price needs its pack, for example "${priceExample}".`);
export const badMoney: Trouble = {
  code: 'bad-quantity',
  text: `A price has to be above zero, with at most nine digits before the point and six after it: "${priceExample}".`,
};
export const otherCurrency = (said: string, own: string): Trouble => ({
  code: 'bad-quantity',
  text: `This book reckons in ${own}, and that is in ${said}. Give it in ${own}, or ask for "currency ${said}" first.`,
});
export const whichDay: Trouble = {
  code: 'bad-quantity',
  text: 'On which day was that price? Give the whole date, for example "shea 16 per kg on 2026-03-02", or leave it out for today.',
};
export const labourHow = missing(
  'What does an hour cost, and how many does a batch take? For example "labour 15 an hour, 2 hours".',
);

/** Words that may stand around any of these requests. */
export const aroundMoney = new Set([
  ...priceWords,
  ...batchCostWords,
  'delete',
  'add',
  'adding',
  'include',
  'including',
  'remove',
  'drop',
  'clear',
  'forget',
  'show',
  'free',
  'off',
  'none',
  ...`myself yourself ourselves ourself worth count counting counts hourly rate rates my our time work working working's wages own want to set fix leave ignore skip lasts last lasting
  remind tell know kilo kilos a an one of don't dont not`.split(/\s+/),
]);

/** The last request about money, if that is what the member asked last. */
export const lastCost = (reading: Reading): Readonly<Record<string, unknown>> | undefined =>
  reading.last?.topic === 'cost' ? reading.last.request : undefined;

export const isCurrencySign = (item: Item): boolean => /^[€$£]$/.test(item.word);
