import type { LabelElement } from '../../core/data/rules/label-rule.ts';
import { labelRules } from '../../core/data/rules/label-rules.ts';
import type { Lack, LackCode } from '../../core/label/missing.ts';
import type { Region } from '../../core/settings.ts';
import { howSeen } from './check-text.ts';

const lackTexts: Readonly<Record<LackCode, string>> = {
  identity: 'what it is for (the name does not say; I took it for a lip balm)',
  net: 'net contents (say what one tin holds: "12 g")',
  ingredients: 'which oil the herb was infused in (say it, or fill it in)',
  lot: 'lot number (left blank; or say "lot 26K25-1")',
  'lot-advised': 'lot number (not asked by law, but a recall needs one)',
  'best-before': 'a date (it would be over with the month of making)',
  maker: 'name and address (left blank)',
  'uk-responsible-person': 'a UK responsible person (one in the EU will do until 2027-12-31 only)',
  contact: 'contact for reactions: address, phone or web page (left blank)',
  french: 'French beside the English',
  'member-language': 'the language of the country it is sold in (all but the ingredient list)',
};

const ruleFor = (region: Region, element: LabelElement) =>
  labelRules.find((rule) => rule.region === region && rule.element === element);

/** Where a rule stands, short. */
export const ruleCite = (region: Region, element: LabelElement): string => {
  const rule = ruleFor(region, element);
  return rule ? `${rule.cite.split(';')[0]} (${howSeen(rule.status)})` : '';
};

export const lackText = ({ code }: Lack): string => lackTexts[code];

/** What comes before the first sale, where the rules say so. */
export const beforeSale = (region: Region): string | undefined => ruleFor(region, 'before-sale')?.rule;
