import { z } from 'zod';
import { decimal } from '../../core/cost/prices.ts';
import { forms } from '../../core/design/wishes.ts';
import { claimDesign, designExample } from '../readers/design-claim.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerDesign } from '../words/design.ts';

const wanted = z.strictObject({
  ingredient: z.string().min(1).max(60),
  percent: z
    .number()
    .gt(0, 'A share has to be more than zero. Try "with 20 % shea".')
    .max(100, 'A share cannot be more than 100 %. Try "with 20 % shea".')
    .optional(),
});

const request = z.strictObject({
  form: z.enum(forms),
  survivesC: z
    .number()
    .min(-50, 'That is colder than any day I know. Try "survives 35 C".')
    .max(90, 'That is hotter than any day. Try "survives 38 C".')
    .optional(),
  vegan: z.boolean().optional(),
  without: z.array(z.string().max(60)).max(40, 'That is more than I can leave out at once (40).').optional(),
  with: z.array(wanted).max(12, 'That is more than fits one balm: name at most 12 ingredients.').optional(),
  shelfLifeMonths: z
    .number()
    .gt(0, 'How long should it keep? Try "keeps 12 months".')
    .max(240, 'No oil keeps that long. Try "keeps 12 months".')
    .optional(),
  /** The cheap first, at the group's prices, and up to a ceiling if one was said. */
  price: z.boolean().optional(),
  priceLimit: z
    .strictObject({
      amount: decimal,
      per: z.enum(['kg', 'container']),
      container: z.string().max(30).optional(),
      size: z
        .strictObject({
          amount: z
            .number()
            .gt(0, 'What does one hold? Try "under 0.60 a tin of 15 ml".')
            .max(10_000, 'That is no small container. Try "under 0.60 a tin of 15 ml".'),
          unit: z.enum(['g', 'ml']),
        })
        .optional(),
    })
    .optional(),
  /** Only what is on the shelf. */
  stocked: z.boolean().optional(),
  /** The proposal to be told in full, from 0. */
  show: z.int().min(0).max(2).optional(),
});
export type DesignWish = z.output<typeof request>;

const formWords: Readonly<Record<string, string>> = {
  stick: 'stick',
  tin: 'balm in a tin',
  tube: 'balm in a squeeze tube',
};

const spoken = ({ form, survives, wishes }: SlashValues): string => {
  const what = form === undefined ? 'lip balm' : (formWords[String(form)] ?? 'balm');
  const heat = survives === undefined ? '' : ` that survives ${survives} C`;
  return `design a ${what}${heat}${wishes === undefined ? '' : `, ${wishes}`}`;
};

export const design = topic({
  name: 'design',
  summary:
    'From wishes to a recipe: stick, tin or soft, hottest day, vegan, what goes in and what stays out.',
  request,
  examples: [
    {
      say: designExample,
      means: {
        form: 'stick',
        survivesC: 38,
        vegan: true,
        without: ['nuts'],
        with: [{ ingredient: 'shea-butter' }, { ingredient: 'mango-butter' }],
      },
    },
    { say: 'design a lip balm stick for hot weather', means: { form: 'stick', survivesC: 35 } },
    {
      say: 'I want a soft balm in a tin with 20% shea, no beeswax, unscented',
      means: { form: 'tin', with: [{ ingredient: 'shea-butter', percent: 20 }] },
    },
  ],
  slash: {
    options: z.object({
      form: z.enum(forms).optional().describe('Stick, tin, or squeeze tube (soft)'),
      survives: z.number().min(-50).max(200).optional().describe('Hottest day it must survive, in °C'),
      wishes: z
        .string()
        .max(500)
        .optional()
        .describe('For example: vegan, no nuts, with shea and peppermint oil, keeps 12 months'),
    }),
    say: spoken,
  },
  read: claimDesign,
  answer: answerDesign,
});
