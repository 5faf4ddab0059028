import { drawable } from '../../core/chart/chart-text.ts';
import type { Label, LabelCaution } from '../../core/label/label.ts';
import type { LabelText } from '../../core/label/sheet/face.ts';
import type { Region } from '../../core/settings.ts';

/** What it is for, in English and French, by the words that say so in a product's name. */
const functions: readonly (readonly [RegExp, string, string])[] = [
  [/\blip\s+(?:gloss|oil)\b/i, 'Lip gloss', 'Brillant à lèvres'],
  [/\blip\s+(?:tint|colou?r)\b/i, 'Lip tint', 'Baume teinté pour les lèvres'],
  [/\blip\s+scrub\b/i, 'Lip scrub', 'Gommage pour les lèvres'],
  [
    /\blip\b.*\b(?:balm|salve|butter|stick|care)\b|\blipbalm\b|\b(?:balm|salve)\b.*\blips?\b/i,
    'Lip balm',
    'Baume à lèvres',
  ],
  [/\bhands?\b.*\b(?:balm|salve|butter|cream)\b/i, 'Hand balm', 'Baume pour les mains'],
  [/\b(?:foot|feet|heels?)\b.*\b(?:balm|salve|butter)\b/i, 'Foot balm', 'Baume pour les pieds'],
  [/\bbeard\b.*\b(?:balm|wax|oil|butter)\b/i, 'Beard balm', 'Baume à barbe'],
  [/\bbody\b.*\b(?:balm|butter|salve)\b/i, 'Body balm', 'Baume pour le corps'],
  [/\bcuticle\b/i, 'Cuticle balm', 'Baume pour les cuticules'],
  [/\bsolid\s+perfume\b/i, 'Solid perfume', 'Parfum solide'],
  [/\b(?:balm|salve|ointment)\b/i, 'Balm', 'Baume'],
];

export interface Identity {
  readonly en: string;
  readonly fr: string;
  /** True where the product's own name says what it is for. */
  readonly clear: boolean;
}

/** What the product is for by its name; a lip balm where the name does not say. */
export const identityOf = (name: string | undefined): Identity => {
  const found = functions.find(([pattern]) => name !== undefined && pattern.test(name));
  if (found) return { en: found[1], fr: found[2], clear: true };
  return { en: 'Lip balm', fr: 'Baume à lèvres', clear: false };
};

const cautionTexts: Readonly<Record<LabelCaution, readonly [en: string, fr: string]>> = {
  breathing: ['Keep away from children under 3.', 'Tenir hors de portée des enfants de moins de 3 ans.'],
  salicylate: ['Not for children under 6.', 'Ne pas utiliser chez les enfants de moins de 6 ans.'],
  honey: ['Not for babies under 12 months.', 'Ne convient pas aux bébés de moins de 12 mois.'],
  'stop-if-it-stings': [
    'Stop using if skin or lips sting or swell.',
    'Cesser l’emploi en cas de picotement ou d’enflure.',
  ],
};

/** Names and addresses to fill in by hand, never invented here. */
const makerBlank: Readonly<Record<Region, string>> = {
  eu: 'Name, street, town, country:',
  uk: 'UK name, street, town, postcode:',
  us: 'Name, street, city, state, ZIP:',
  ca: 'Name, address / Nom, adresse :',
  au: 'Name, street address:',
};
const contactBlank: Partial<Readonly<Record<Region, string>>> = {
  us: 'Report reactions to:',
  ca: 'Contact:',
};

export interface TextInput {
  readonly region: Region;
  readonly name?: string;
  readonly label: Label;
  readonly lot?: string;
  readonly maker?: string;
  readonly contact?: string;
  /** A date is printed outside the EU and Great Britain only when the maker gave one. */
  readonly dateGiven: boolean;
  readonly french: boolean;
  readonly openMonths: number;
}

const monthYear = (month: string): string => `${month.slice(5)}/${month.slice(0, 4)}`;

/** The printed date line, for regions and makers that want one. */
export const dateText = ({ region, label, dateGiven, french }: TextInput): string | undefined => {
  const { mark, month, tooShort } = label.durability;
  if (mark !== 'date' || tooShort) return undefined;
  if (region === 'eu' || region === 'uk') return `best used before the end of ${monthYear(month)}`;
  if (!dateGiven) return undefined;
  return french ? `Best before / Meilleur avant: ${month}` : `Best before ${monthYear(month)}`;
};

const asBlank = (prompt: string) => ({ text: prompt, blank: true }) as const;

const peopleParts = ({ region, maker, contact }: TextInput): LabelText['small'] => {
  const prompt = contactBlank[region];
  return [
    maker === undefined ? asBlank(makerBlank[region]) : { text: drawable(maker) },
    ...(contact === undefined
      ? prompt === undefined
        ? []
        : [asBlank(prompt)]
      : [{ text: region === 'us' ? `Reactions: ${drawable(contact)}` : drawable(contact) }]),
  ];
};

/** Sentences that are printed as cautions, in the languages of the region. */
export const cautionLines = ({ label, french }: TextInput): readonly string[] =>
  label.cautions.flatMap((code) => (french ? cautionTexts[code] : cautionTexts[code].slice(0, 1)));

const dateParts = (input: TextInput): LabelText['small'] => {
  const date = dateText(input);
  if (date !== undefined) return [{ text: date }];
  const { mark } = input.label.durability;
  return mark === 'open-jar' && (input.region === 'eu' || input.region === 'uk')
    ? [{ text: `${input.openMonths}M`, jar: true }]
    : [];
};

/** Everything that is printed on a tin, in the order it is read. */
export const labelText = (input: TextInput): LabelText => {
  const { name, label, lot, french } = input;
  const identity = identityOf(name);
  const what = french ? `${identity.en} / ${identity.fr}` : identity.en;
  const title = (name === undefined ? '' : drawable(name)) || what;
  const heading = french ? 'Ingredients / Ingrédients:' : 'Ingredients:';
  const says = title !== what && (french || !identity.clear);
  const net = label.net?.printed;
  return {
    title,
    ...(says ? { subtitle: what } : {}),
    ...(net === undefined ? {} : { net }),
    small: [
      { text: `${heading} ${label.list.entries.map((entry) => entry.name).join(', ')}` },
      ...dateParts(input),
      lot === undefined ? asBlank('LOT') : { text: `LOT ${drawable(lot)}` },
      ...cautionLines(input).map((text) => ({ text })),
      ...peopleParts(input),
    ],
  };
};
