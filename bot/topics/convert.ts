import { z } from 'zod';
import { massUnits, temperatureUnits, volumeUnits } from '../../core/units.ts';
import { claimConvert } from '../readers/convert-claim.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerConvert } from '../words/convert.ts';

const units = [...massUnits, ...volumeUnits, ...temperatureUnits] as const;

const request = z.strictObject({
  value: z
    .number()
    .min(-1e9, 'That number is too small for me. Try "5 oz in g".')
    .max(1e9, 'That number is too big for me. Try "5 oz in g".'),
  from: z.enum(units),
  to: z.enum(units),
  ingredient: z.string().max(60).optional(),
});
export type ConvertWish = z.output<typeof request>;

const spoken = ({ amount, to, ingredient }: SlashValues): string =>
  `convert ${amount}${ingredient === undefined ? '' : ` of ${ingredient}`}${to === undefined ? '' : ` to ${to}`}`;

export const convert = topic({
  name: 'convert',
  summary: 'Weights, volumes, spoons, drops and temperatures, one into the other.',
  request,
  examples: [
    { say: '5 oz in g', means: { value: 5, from: 'oz', to: 'g' } },
    {
      say: '2 tbsp shea butter in grams',
      means: { value: 2, from: 'tbsp', to: 'g', ingredient: 'shea-butter' },
    },
    { say: '150F in C', means: { value: 150, from: 'F', to: 'C' } },
    {
      say: '30 drops of peppermint oil in ml',
      means: {
        value: 30,
        from: 'drop',
        to: 'ml',
        ingredient: 'peppermint-essential-oil',
      },
    },
  ],
  slash: {
    options: z.object({
      amount: z.string().min(1).max(40).describe('How much, for example 5 oz, 2 tbsp, 150 F'),
      to: z.string().max(20).optional().describe('Into which unit, for example g, ml, C'),
      ingredient: z.string().max(80).optional().describe('Of what, where a volume becomes a weight'),
    }),
    complete: { ingredient: 'ingredient' },
    say: spoken,
  },
  read: claimConvert,
  answer: answerConvert,
});
