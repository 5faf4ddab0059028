import { z } from 'zod';
import { regions, settingsSchema } from '../../core/settings.ts';
import { claimSettings } from '../readers/settings-claim.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerSettings } from '../words/settings.ts';

const request = z.strictObject({
  region: settingsSchema.shape.region.optional(),
  units: settingsSchema.shape.units.optional(),
  currency: settingsSchema.shape.currency.optional(),
  stepG: settingsSchema.shape.stepG.optional(),
  lossPercent: z
    .number()
    .min(0, 'The loss cannot be below zero. Try "set loss to 3%".')
    .max(50, 'A loss of more than 50 % is more waste than balm. Try "set loss to 5%".')
    .optional(),
  writerRole: settingsSchema.shape.writerRole.optional(),
  zone: settingsSchema.shape.zone,
  capMonths: settingsSchema.shape.capMonths,
  decimal: settingsSchema.shape.decimal,
});
export type SettingsWish = z.output<typeof request>;

const spoken = (values: SlashValues): string => {
  const { region, units, currency, step, loss, writers, zone, months, decimal } = values;
  const parts = [
    region === undefined ? '' : `region ${region}`,
    units === undefined ? '' : `units ${units}`,
    currency === undefined ? '' : `currency ${currency}`,
    step === undefined ? '' : `scale reads ${step} g`,
    loss === undefined ? '' : `set loss to ${loss}%`,
    writers === undefined
      ? ''
      : /^every/i.test(String(writers))
        ? 'everyone may write'
        : `only role ${writers} may write`,
    zone === undefined ? '' : `time zone ${zone}`,
    months === undefined ? '' : `best before at most ${months} months`,
    decimal === undefined ? '' : `decimal ${decimal}`,
  ].filter(Boolean);
  return parts.length === 0 ? 'settings' : parts.join(', ');
};

export const settings = topic({
  name: 'settings',
  summary: 'Region, units, currency, scale, loss, who writes, time zone, best-before ceiling, decimal sign.',
  request,
  examples: [
    { say: 'settings', means: {} },
    { say: 'region us', means: { region: 'us' }, changes: true },
    { say: 'scale reads 0.01 g', means: { stepG: 0.01 }, changes: true },
    { say: 'set loss to 5%', means: { lossPercent: 5 }, changes: true },
    { say: 'units oz, currency EUR', means: { units: 'oz', currency: 'EUR' }, changes: true },
    { say: 'only role Bench may write', means: { writerRole: 'Bench' }, changes: true },
    { say: 'time zone Europe/Lisbon', means: { zone: 'Europe/Lisbon' }, changes: true },
    { say: 'best before at most 9 months', means: { capMonths: 9 }, changes: true },
    { say: 'decimal comma', means: { decimal: 'comma' }, changes: true },
  ],
  slash: {
    options: z.object({
      region: z.enum(regions).optional().describe('Whose rules and measures apply'),
      units: z.enum(['g', 'oz']).optional().describe('Weights in grams, or with ounces beside them'),
      currency: z.string().min(3).max(3).optional().describe('Three letters, for example EUR'),
      step: z.enum(['1', '0.1', '0.01', '0.001']).optional().describe('What your scale reads, in grams'),
      loss: z.number().min(0).max(50).optional().describe('Loss allowance in percent'),
      writers: z.string().max(100).optional().describe('Role that may write, or "everyone"'),
      zone: z.string().max(60).optional().describe('Where your days begin, for example Europe/Lisbon'),
      months: z.int().min(1).max(60).optional().describe('Best before at most so many months after a pour'),
      decimal: z.enum(['point', 'comma']).optional().describe('How numbers are written: 12.5 or 12,5'),
    }),
    say: spoken,
  },
  manages: (wish) => Object.keys(wish).length > 0,
  read: claimSettings,
  answer: answerSettings,
});
