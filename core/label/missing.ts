import type { LabelElement } from '../data/rules/label-rule.ts';
import { labelRules } from '../data/rules/label-rules.ts';
import type { Region } from '../settings.ts';

/** What a label has so far. Anything absent is left as a blank to fill in. */
export interface LabelHas {
  /** The product's name or function says what it is for. */
  readonly identity: boolean;
  readonly net: boolean;
  /** False for a pack the region frees from a figure. */
  readonly netRequired: boolean;
  /** Every name of the ingredient list is known. */
  readonly ingredients: boolean;
  readonly lot: boolean;
  readonly bestBefore: boolean;
  /** The responsible person or maker, and where that person sits. */
  readonly maker?: 'there' | 'eu' | 'uk';
  readonly contact: boolean;
  readonly languages: readonly ('en' | 'fr')[];
  /** An EU country's language was asked for or is English. */
  readonly memberLanguage: boolean;
}

export type LackCode =
  | 'identity'
  | 'net'
  | 'ingredients'
  | 'lot'
  | 'lot-advised'
  | 'best-before'
  | 'maker'
  | 'uk-responsible-person'
  | 'contact'
  | 'french'
  | 'member-language';

export interface Lack {
  readonly code: LackCode;
  readonly element: LabelElement;
  /** `advised` is not asked by law. */
  readonly level: 'must' | 'advised';
}

/** Last day an EU responsible person will do on a label in Great Britain (guidance of 4 May 2023, read). */
export const euPersonUntil = '2027-12-31';

const asks = (region: Region, element: LabelElement, on: string): boolean =>
  labelRules.some(
    (rule) =>
      rule.region === region &&
      rule.element === element &&
      rule.required !== 'no' &&
      rule.required !== 'info' &&
      (rule.from === undefined || rule.from <= on),
  );

const must = (code: LackCode, element: LabelElement): Lack => ({ code, element, level: 'must' });

const identityLack = ({ identity }: LabelHas, region: Region, on: string): Lack[] => {
  const element = (['identity', 'function'] as const).find((each) => asks(region, each, on));
  return identity || element === undefined ? [] : [must('identity', element)];
};

const makerLack = ({ maker }: LabelHas, region: Region, on: string): Lack[] => {
  if (maker === undefined) return [must('maker', 'maker')];
  return region === 'uk' && maker === 'eu' && on > euPersonUntil
    ? [must('uk-responsible-person', 'maker')]
    : [];
};

/** Canada asks for contact details together with the maker's name (SOR/2024-63). */
const contactAsked = (region: Region, on: string): boolean => region === 'ca' || asks(region, 'contact', on);

const languageLack = (has: LabelHas, region: Region): Lack[] => {
  if (region === 'ca' && !has.languages.includes('fr')) return [must('french', 'language')];
  return region === 'eu' && !has.memberLanguage ? [must('member-language', 'language')] : [];
};

const lotLack = (region: Region, on: string): Lack =>
  asks(region, 'lot', on) ? must('lot', 'lot') : { code: 'lot-advised', element: 'lot', level: 'advised' };

/** What a label lacks for a region on a day (ISO), by law or by good practice. */
export const lacksOf = (has: LabelHas, region: Region, on: string): readonly Lack[] => [
  ...identityLack(has, region, on),
  ...(has.net || !has.netRequired ? [] : [must('net', 'net')]),
  ...(has.ingredients ? [] : [must('ingredients', 'ingredients')]),
  ...makerLack(has, region, on),
  ...(has.contact || !contactAsked(region, on) ? [] : [must('contact', 'contact')]),
  ...(has.bestBefore || !asks(region, 'durability-date', on) ? [] : [must('best-before', 'durability-date')]),
  ...(has.lot ? [] : [lotLack(region, on)]),
  ...languageLack(has, region),
];

/** "30 months or less" asks for a date, more for the open jar (Article 19(1)(c)). */
export const durabilityMark = (months: number): 'date' | 'open-jar' => (months <= 30 ? 'date' : 'open-jar');
