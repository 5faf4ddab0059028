import { z } from 'zod';
import { paperSizes } from '../../core/paper/paper.ts';
import { maxLines, recipeLine, recipeName } from '../../core/recipe.ts';
import { regions } from '../../core/settings.ts';
import { claimLabel } from '../readers/label-claim.ts';
import { readPointed } from '../readers/pointed-name.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerLabel } from '../words/label.ts';

/** More than fills two dozen pages: print a page again instead. */
const mostTins = 600;

const size = (what: string, least: number, most: number, instead: string) =>
  z
    .number({ error: `${what} has to be a number of millimetres. Try "${instead}".` })
    .min(
      least,
      `${what} is too small for a label to be cut or read (at least ${least} mm). Try "${instead}".`,
    )
    .max(most, `${what} is more than a page takes. Try "${instead}".`);

const isoDay = z.iso.date('Write the day as 2027-01-02.');
const line = (most: number) => z.string().trim().min(1).max(most, `At most ${most} characters fit on a tin.`);

const request = z.strictObject({
  recipe: recipeName.optional(),
  lines: z.array(recipeLine).max(maxLines, `A recipe has at most ${maxLines} lines.`).optional(),
  /** Lot of a poured batch: its recipe, dates, fill and number of tins are on record. */
  batch: z.string().max(40).optional(),
  /** What one tin holds; millilitres are turned into grams, as a label declares weight. */
  net: z
    .strictObject({
      amount: z
        .number()
        .gt(0, 'What a tin holds has to be more than nothing, for example "12 g".')
        .max(1000, 'A label for more than 1000 g is no small tin. Try "12 g".'),
      unit: z.enum(['g', 'oz', 'ml']),
    })
    .optional(),
  tins: z
    .int('Labels come in whole numbers, for example "24 labels".')
    .min(1, 'Ask for at least one label, for example "24 labels".')
    .max(mostTins, `At most ${mostTins} tins at once: print the pages again for more. Try "24 labels".`)
    .optional(),
  region: z.enum(regions).optional(),
  country: z.string().max(30).optional(),
  /** ISO days: first supply, sale when that is later, making, best before. */
  on: isoDay.optional(),
  soldOn: isoDay.optional(),
  madeOn: isoDay.optional(),
  bestBefore: isoDay.optional(),
  keepsMonths: z
    .int()
    .min(1, 'It has to keep for at least a month, for example "keeps 12 months".')
    .max(120, 'No balm keeps for more than 120 months. Try "keeps 12 months".')
    .optional(),
  lot: z.string().max(40).optional(),
  name: line(80).optional(),
  maker: line(140).optional(),
  contact: line(140).optional(),
  /** Where the responsible person sits. */
  person: z.enum(['eu', 'uk']).optional(),
  englishOnly: z.boolean().optional(),
  scentAsAroma: z.boolean().optional(),
  use: z.enum(['leave-on', 'rinse-off']).optional(),
  analyses: z
    .array(
      z.strictObject({
        ingredient: z.string().max(60),
        name: z.string().max(80),
        percent: z.number().min(0).max(100, 'A share is at most 100 %.'),
      }),
    )
    .max(100)
    .optional(),
  roundMm: size('A round label', 15, 260, 'round labels 40 mm').optional(),
  strip: z
    .strictObject({
      tinMm: size('The tin', 10, 260, 'strips for a tin 48 mm x 15 mm').optional(),
      heightMm: size('The strip’s height', 6, 260, 'strips for a tin 48 mm x 15 mm').optional(),
      overlapMm: size('The overlap', 0, 40, 'with 6 mm overlap').optional(),
    })
    .optional(),
  paper: z.enum(paperSizes).optional(),
});
export type LabelWish = z.output<typeof request>;

const spoken = ({ of, net, tins, round, strip, paper, region, lot }: SlashValues): string =>
  [
    `label for ${of}`,
    ...(net === undefined ? [] : [`${net}`]),
    ...(tins === undefined ? [] : [`${tins} labels`]),
    ...(round === undefined ? [] : [`round ${round} mm`]),
    ...(strip === undefined ? [] : [`strips for a tin ${strip}`]),
    ...(lot === undefined ? [] : [`lot ${lot}`]),
    ...(region === undefined ? [] : [`region ${region}`]),
    ...(paper === undefined ? [] : [`on ${paper} paper`]),
  ].join(', ');

export const label = topic({
  name: 'label',
  summary: 'What stands on the tin, in your region’s order, and a sheet of labels to print.',
  request,
  examples: [
    {
      say: 'label for Fernlea mint lip balm, 12 g, region us',
      means: { recipe: 'Fernlea mint lip balm', net: { amount: 12, unit: 'g' }, region: 'us' },
      demo: 'Fernlea mint lip balm',
    },
    {
      say: 'print labels for Fernlea mint lip balm, 24 round lids 40 mm, 12 g, letter',
      means: { recipe: 'Fernlea mint lip balm', tins: 24, roundMm: 40, paper: 'letter' },
      demo: 'Fernlea mint lip balm',
    },
    {
      say: 'strips for a tin 48 mm x 15 mm, Fernlea hand balm, 12 g',
      means: { recipe: 'Fernlea hand balm', strip: { tinMm: 48, heightMm: 15 } },
      demo: 'Fernlea hand balm',
    },
    {
      say: 'label for 20% beeswax, 30% shea butter, 50% olive oil, 15 ml tins',
      means: {
        lines: [
          { ingredient: 'beeswax', amount: 20, unit: 'percent' },
          { ingredient: 'shea-butter', amount: 30, unit: 'percent' },
          { ingredient: 'olive-oil', amount: 50, unit: 'percent' },
        ],
        net: { amount: 15, unit: 'ml' },
      },
    },
  ],
  slash: {
    options: z.object({
      of: z.string().max(1000).describe('A saved recipe, or one written out'),
      net: z.string().max(20).optional().describe('What one tin holds, for example 12 g'),
      tins: z.int().min(1).max(mostTins).optional().describe('How many tins'),
      round: z.number().min(15).max(260).optional().describe('Round lid labels: diameter in mm'),
      strip: z.string().max(30).optional().describe('Strip round a tin, across x high: 48 mm x 15 mm'),
      paper: z.enum(paperSizes).optional().describe('Paper to print on'),
      region: z.enum(regions).optional().describe('Whose rules, if not your group’s'),
      lot: z.string().max(40).optional().describe('Lot number to print'),
    }),
    complete: { of: 'recipe', lot: 'batch' },
    say: spoken,
  },
  read: readPointed(claimLabel),
  answer: answerLabel,
});
