import type { Trouble } from '../answer.ts';

export const boughtExample = 'bought 500 g beeswax lot K12, best before 2027-03, 14.50';

/** Any of these, or a lot code, has to be in a message about the stock. */
export const stockCues =
  `bought buy got received ordered filtered sieve drained decanted bottled stock stocked took taken lost picked fetched collected restocked purchased lot lots low warn alert mark left opened open strained infused used use threw thrown binned wasted discarded spilled
  spilt dispose scrap scrapped ditched sieved weighs down started scales pressed became infusion gave ready done sieved squeezed drained strained adjust really count counted weighed empty finished delivery arrived delivered have has best expires note notes bb bbe inventory shelf gone drawn drew checked weighing sold borrowed melted candles soap ate eaten take remove minus subtract deduct min
  running remaining short scarce watch shout least there much any house buy paid pay poured rancid restock reorder re-order went into bin whole tipped dumped disposed throw chucked rid drain compost more
  ordering reordering buying should never told
  warning warnings minimum below under less tell know ping nudge keep remains any still balance total cupboard list shopping lots' supplies tossed how's doing looking ingredients 've larder pantry storeroom shelves needed required recount dated`.split(
    /\s+/,
  );

const words = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/));

/** Words around a purchase that ask for nothing more. */
export const boughtWords = words(`
  bought buy got received delivery arrived delivered new stock add added to put in into from at for of and with we i today yesterday lot lots batch best before bb bbe cost costs paid
  price each per a an one bag bags pack packs packet packets bottle bottles jar jars tub tubs tin tins block blocks sack sacks box boxes can cans drum drums bar bars cake cakes slab slabs piece pieces carton cartons case cases us the on shelf note record
  came eur euro euros gbp usd pounds pound dollars incl excl vat tax tax-free delivery included including plus organic raw refined unrefined supplier ingredient amount date more
  another which that keeps keep until till lasts lasting good parcel post postman number numbers without hallo same found under taken took gave given sent gift gifted donated donation swapped spare stored away last first lastly firstly finally besides well too next some our brought pence cent cents p restocked stocked purchase purchased ordered it also no code altogether total x opened white yellow pellets virgin cold pressed extra dried g ml again up picked fetched collected
  were was been being twice thrice here now cheap cheaper bargain offer sale deal lovely have had came come turned finally both each could only managed able find found order ordered left mine
  label labels sticker tag says said reads marked own old older year's years still remaining rest call called book entered enter write down put please pls harvest harvested melt spring summer autumn winter`);

export const listWords = words(`
  print things thing me number code codes status situation need should must yet needs altogether some can let look down far shelf's stock show list see what which do we have got our the my all is are there in on shelf left how much many still any of level levels stocks lot lots and with inventory ingredients
  ingredient current currently please every everything now today us have's available remaining remain supply supplies kept it them any for a an check prices price cost
  expired open opened to past date dates i has grams go finished running low short get out total grams need restock reorder re-order buy order to anything something
  still about around over more enough remains doing looking holding cupboard store storeroom larder pantry shelves total balance amount quantity supplies own old oldest new opened
  should top replenish again already ok so and off for with on where how's what's whats used up there's here list shopping stocktake their dates whole entire doin goin lookin lookin' doin' drawer fridge box shed garage basket bench cellar attic jar tub bottle bag does you anyone anybody gram kilo kilos ounces oz ml kg weigh could give full bottle bottles bag bags tub tubs packet packets plenty hand work hang wait rest yet statement complete present house home kitchen workroom getting nearly almost empty state overview days moment these look run ran gone buying restocking ordering reordering levels quick question rn whats atm left-over leftovers tho so far total everything everyone lists`);

/** Words of a question about one lot: what the shelf says of it answers all of them. */
export const lotWords: ReadonlySet<string> = new Set([
  ...listWords,
  ...words(
    `drawn drew taken took any anything some something ever far yet been used when did was were bought buy pay paid cost who supplied supplier arrive arrived come came since long first started start details info record tell about everything whom where get brought finished gone is status level what's book says`,
  ),
]);

const missing = (text: string): Trouble => ({ code: 'missing', text });

export const whatBought = missing(`What was bought, and how much? For example "${boughtExample}".`);
export const howMuchBought = (name: string): Trouble =>
  missing(`How much ${name} was bought? For example "${boughtExample}".`);
export const whichStock = missing(
  'Of which lot or ingredient? For example "threw away 50 g of K12, rancid".',
);
export const howMuchTaken = missing(
  'How much? For example "used 50 g of K12" or "threw away 50 g of K12, rancid".',
);
export const noContainers: Trouble = {
  code: 'not-understood',
  text: 'The stock holds ingredients only. What tins and jars cost I can note: "tins are 0.35 each".',
};
export const notInStock = (said: readonly string[]): Trouble => ({
  code: 'not-understood',
  text: `I could not place "${said.slice(0, 4).join(' ')}" in that. One purchase a line or between commas, remarks after "note:", for example "${boughtExample}".`,
});
