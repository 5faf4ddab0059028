import { checkRecipe } from '../../core/check/check.ts';
import type { Shares } from '../../core/check/shares.ts';
import { judgeClaim } from '../../core/claim/claim.ts';
import type { Label } from '../../core/label/label.ts';
import type { LabelText } from '../../core/label/sheet/face.ts';
import type { Region } from '../../core/settings.ts';
import type { Block, Warning } from '../answer.ts';
import type { LabelWish } from '../topics/label.ts';
import { regionNames } from './check-tables.ts';
import { howSeen, nameOf } from './check-text.ts';
import { beforeSale, lackText, ruleCite } from './label-missing.ts';
import type { Printed, SheetAsked } from './label-sheet.ts';
import type { LabelSubject, NetSaid } from './label-subject.ts';
import { dateText, type TextInput } from './label-text.ts';
import { plain } from './numbers.ts';
import { localRules } from './warnings.ts';

/** Everything a label is made of, once recipe, region and days are settled. */
export interface Settled {
  readonly wish: LabelWish;
  readonly subject: LabelSubject;
  readonly shares: Shares;
  readonly region: Region;
  /** True when the message or the group chose the region. */
  readonly regionChosen: boolean;
  readonly on: string;
  readonly madeOn: string;
  readonly name: string | undefined;
  readonly label: Label;
  readonly text: LabelText;
  readonly printed: TextInput;
  readonly net: NetSaid;
}

/** What is missing for the region, and what comes before the first sale. */
export const missingBlock = ({ label, region }: Settled): Block[] => {
  const must = label.lacks.filter(({ level }) => level === 'must');
  const rest = label.lacks.filter(({ level }) => level !== 'must');
  const items = [
    ...must.map((lack) => `Missing: ${lackText(lack)}`),
    ...rest.map((lack) => `Better with: ${lackText(lack)}`),
  ];
  const before = beforeSale(region);
  return [
    ...(items.length > 0 ? [{ kind: 'list', items } as const] : []),
    ...(before ? [{ kind: 'text', text: `A label alone makes nothing legal. ${before}` } as const] : []),
  ];
};

const dateAssumed = ({ label, madeOn, wish, subject, printed }: Settled): readonly string[] => {
  const { bestBefore, reckoned } = label.durability;
  if (!reckoned) return [];
  const made = wish.madeOn === undefined && !subject.batch ? `poured today (${madeOn})` : `made ${madeOn}`;
  const where = dateText(printed) === undefined ? ', not printed there unless you say it' : '';
  return [
    `Best before ${bestBefore}${where}: ${made} from fresh ingredients, usual shelf lives and the house ceiling. An older lot makes it sooner: say "best before 2027-05".`,
  ];
};

const listAssumed = ({ label, subject, region }: Settled): readonly string[] => [
  ...(label.list.allergens.some(({ declare }) => declare)
    ? ['Allergens by the high end of what an oil may hold: the supplier’s analysis is better.']
    : []),
  ...(label.list.ask.length > 0
    ? [`Ask the supplier for the label name of ${label.list.ask.map(nameOf).join(', ')}.`]
    : []),
  ...(region !== 'us' && subject.lines.some(({ ingredient }) => ingredient === 'beeswax')
    ? ['Beeswax stands by its usual name; yellow wax may also be called Cera Flava.']
    : []),
];

/** What was taken for granted. */
export const assumedTexts = (settled: Settled, asked: SheetAsked): readonly string[] => {
  const { wish, region, on, net, regionChosen } = settled;
  const strictest =
    !regionChosen && region === 'eu' ? ', the strictest; say "region us" or another for yours' : '';
  return [
    `Rules of ${regionNames[region]} for goods first handed out on ${on}${strictest}.`,
    ...dateAssumed(settled),
    ...net.assumed,
    ...listAssumed(settled),
    ...asked.assumed,
    ...(wish.country === 'northern ireland' ? ['Northern Ireland follows the EU list.'] : []),
  ];
};

export const sourceText = ({ region, label }: Settled): string => {
  const { status } = label.list.rule;
  return `${ruleCite(region, 'ingredients')}; allergens: ${ruleCite(region, 'allergens') || howSeen(status)}; label names from memory`;
};

const claimWarning = ({ name, region }: Settled): Warning[] => {
  if (name === undefined) return [];
  const judged = judgeClaim(name, region);
  return judged.verdict === 'ok' || judged.unsure
    ? []
    : [
        {
          code: 'claim-in-name',
          text: `The name itself makes a claim. Ask: can I say "${name.slice(0, 60)}".`,
        },
      ];
};

const checkWarning = ({ shares, region, on, wish }: Settled): Warning[] => {
  const report = checkRecipe({ ...shares, region, on, analyses: wish.analyses ?? [] });
  if (report.verdict === 'within') return [];
  const what = report.verdict === 'not-ok' ? 'is not within the figures I know' : 'has things to look at';
  return [{ code: 'check-first', text: `This recipe ${what}: ask for its check before you print.` }];
};

export const warningsOf = (settled: Settled, printed: Printed): readonly Warning[] => {
  const { label, net } = settled;
  return [
    ...checkWarning(settled),
    ...(label.durability.tooShort
      ? [
          {
            code: 'short-shelf-life',
            text: 'It would be past its printed month right away: do not sell it, use it at home.',
          },
        ]
      : []),
    ...(label.durability.reckoned || net.rough
      ? [
          {
            code: 'rough-estimate',
            text: 'Date and contents that were reckoned here are estimates: the maker has to be able to prove them.',
          },
        ]
      : []),
    ...claimWarning(settled),
    ...printed.warnings,
    localRules,
  ];
};

export const holdText = ({ label }: Settled): Block[] => {
  const { net } = label;
  if (!net) return [];
  const free = net.required
    ? ''
    : ' Below 5 g no figure has to be declared; one that is printed has to be true.';
  const card = net.freedOnCard
    ? ' A tin this small needs none only on a labelled card or in a labelled box.'
    : '';
  return [{ kind: 'text', text: `Every tin has to hold at least ${plain(net.holdG)} g.${free}${card}` }];
};
