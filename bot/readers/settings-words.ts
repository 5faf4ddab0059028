import { type Region, regions } from '../../core/settings.ts';
import type { Trouble } from '../answer.ts';
import type { SettingsWish } from '../topics/settings.ts';

const regionNames: readonly (readonly [RegExp, Region])[] = [
  [
    /\b(?:eu|e\.u\.|europe|european union|ireland|germany|france|spain|italy|portugal|netherlands|austria|belgium|sweden|denmark|poland)\b/i,
    'eu',
  ],
  [
    /\b(?:uk|u\.k\.|gb|british|britain|great britain|united kingdom|england|scotland|wales|northern ireland)\b/i,
    'uk',
  ],
  [/\b(?:usa|u\.s\.a?\.?|united states|the states|america|american)\b/i, 'us'],
  [/\b(?:canada|canadian)\b/i, 'ca'],
  [/\b(?:au|australia|australian|oz land)\b/i, 'au'],
];

/** "us" and "ca" are also a pronoun and a circa, so they count only beside the word region or after "in the". */
const shortRegion =
  /\b(?:region|country|rules?)\b\W*(?:to|is|=|:|for|as)?\s*(?:the\s+)?(us|ca)\b|\bin (?:the )?(us)\b|\b(us|ca) (?:region|rules)\b/i;

/** Changes read from a message, or why one of them cannot be made. */
export interface Found {
  readonly wish: SettingsWish;
  readonly trouble?: Trouble;
}

export const none: Found = { wish: {} };

const regionCue =
  /\b(?:region|(?<!\bis an? (?:\w+ )?)country|rules|we are in|we're in|were in|i am in|i'm in|im in|we live in|i live in|based in|located in|(?:we|i) (?:sell|trade) (?:only )?in)\b/i;

export const readRegion = (text: string): Found => {
  if (!regionCue.test(text)) return none;
  const short = shortRegion.exec(text);
  const code = (short?.[1] ?? short?.[2] ?? short?.[3])?.toLowerCase();
  const region =
    regionNames.find(([pattern]) => pattern.test(text))?.[1] ?? regions.find((each) => each === code);
  if (region) {
    return { wish: { region } };
  }
  if (!/\bregion\b/i.test(text) || /\bregion\s*\??\s*$/i.test(text)) return none;
  return {
    ...none,
    trouble: {
      code: 'bad-quantity',
      text: 'I know the regions eu, uk, us, ca and au. For example "region us".',
    },
  };
};

const unitsPattern =
  /\b(?:units?|use|show|prefer|weigh|work|switch)\b(?:\s+(?:in|to|the|unit|units|is|are|as|as|me|us|everything|weights|amounts))*\W{0,3}\s*(g|grams?|oz|ounces?|metric|imperial)\b(?!\s+of)/i;
const unitsTail = /\b(ounces?|oz|grams?)\s+(?:as\s+)?units?\b/i;

/** "Weights in ounces please", "give us ounces from now on". */
const unitsAsked =
  /^\W*(?:please |now |ok )*(?:(?:all |our |the )?(?:weights?|amounts?|masses|tables|everything) (?:should be |are |always )?in|give (?:me|us)|(?:we|i)(?:'d like|'d rather have| want| would like| need| prefer)) (ounces|oz|grams)(?: (?:please|from now on|instead|always|now|as well|too|thanks))+\W*$/i;
export const readUnits = (text: string): Found => {
  const match = unitsPattern.exec(text) ?? unitsTail.exec(text) ?? unitsAsked.exec(text);
  if (!match?.[1]) return none;
  const units = /^(?:oz|ounce|imperial)/i.test(match[1]) ? 'oz' : 'g';
  return { wish: { units } };
};

const currencyNames: Readonly<Record<string, string>> = {
  euro: 'EUR',
  euros: 'EUR',
  '€': 'EUR',
  sterling: 'GBP',
  '£': 'GBP',
  pounds: 'GBP',
  'us dollars': 'USD',
  'american dollars': 'USD',
  'canadian dollars': 'CAD',
  'australian dollars': 'AUD',
  'swiss francs': 'CHF',
};
const currencyPattern =
  /\b(?:currency|prices|money|pay|buy|everything|priced|(?:count|reckon|trade|calculate|prices?) in)\b(?:\s+(?:to|is|in|as|=|are|the|of))*\W{0,3}\s*((?:us|american|canadian|australian|swiss)\s+\w+|[a-z]{3,8}\b|[€£])/i;
const known = new Set(Intl.supportedValuesOf('currency'));

export const readCurrency = (text: string): Found => {
  if (
    !/\bcurrency\b|\b(?:prices?|money|count|reckon|calculate|trade)\b(?: (?:things|everything|prices|costs))?(?: (?:in|is|are)){1,2} (?:gbp|eur|usd|cad|aud|chf|euros?|pounds|sterling|(?:us |canadian |australian |american )?dollars|swiss francs|[€£])(?: sterling)?(?: (?:please|from now on|now|always|thanks))*\W*$|^\W*(?:please |now )*(?:we|i|our prices|prices|all prices|everything) (?:pay|buy|price|are|is|should be)(?: everything| things| for things)?(?: in)? (?:euros?|pounds|sterling|(?:us |canadian |australian |american )?dollars|swiss francs|[€£])\W*$/i.test(
      text,
    )
  )
    return none;
  const match = currencyPattern.exec(text);
  const said = match?.[1]?.toLowerCase();
  if (!match || said === undefined || said === 'please') return none;
  const code = (Object.hasOwn(currencyNames, said) ? currencyNames[said] : undefined) ?? said.toUpperCase();
  if (known.has(code)) return { wish: { currency: code } };
  return {
    ...none,
    trouble: {
      code: 'bad-quantity',
      text: `I do not know the currency "${said}". Use its three letters, for example "currency EUR".`,
    },
  };
};

const onlyRole =
  /\b(?:only|just)\s+(?:the\s+)?(?:(?:members?|people|those)\s+(?:with|of|in)\s+(?:the\s+)?)?(?:role\s+)?(?:the\s+)?["@]*(.+?)["]*\s+(?:role\s+)?(?:may|can|should(?: be able to| be allowed to)?|are allowed to|is allowed to|get to|gets to|members? (?:may|can))\s+(?:write|edit|save|change|record)\b/i;
/** "Let only the role Bench write", "writing is for the role Bench only". */
const letOnly =
  /\blet only (?:the )?(?:(?:members?|people|those) (?:with|of|in) (?:the )?)?(?:role )?["@]*([\p{L}\p{N}][^"\n]{0,60}?)"* (?:role )?(?:write|edit|record)\b|\bwriting (?:(?:is |should be )(?:only )?|only )for (?:the )?(?:role )?["@]*([\p{L}\p{N}][^"\n]{0,60}?)"*(?: role)?(?: only| alone)?\W*$/iu;
const writerRole =
  /\b(?:writers?|writing|write)\s*(?:role)?\s*(?:is|=|:|to)\s*["@]*([\p{L}\p{N}][^"\n]{0,60}?)"*\s*$/iu;
const everyone =
  /\blet (?:everyone|everybody|anyone|anybody|all(?: of us)?) (?:write|edit|record)\b|\b(?:everyone|everybody|anyone|anybody|all(?: members)?|all of us)\s+(?:may|can|should|is allowed to|are allowed to|gets? to)\s+(?:write|edit|save|change|record)\b|\b(?:no|any|clear|remove the|without)\s+writers?(?:'s)?\s+role\b/i;

export const readRole = (text: string): Found => {
  if (everyone.test(text)) return { wish: { writerRole: null } };
  const match = letOnly.exec(text) ?? onlyRole.exec(text) ?? writerRole.exec(text);
  const role = (match?.[1] ?? match?.[2])
    ?.replace(/^role\s+/i, '')
    .replace(/\s+(?:members?|role)$/i, '')
    .trim();
  // "I have to write to everyone who got it, who was that?" is no role.
  if (!role || /[?,]|\bwho\b/i.test(role)) return none;
  const all =
    /^(?:(?:free|open|allowed|okay?|possible) (?:for|to) )?(?:everyone|everybody|anyone|all|all members|all of us)$/i.test(
      role,
    );
  return { wish: { writerRole: all ? null : role.slice(0, 100) } };
};
