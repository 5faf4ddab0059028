import { z } from 'zod';
import { regions } from '../../core/settings.ts';
import { claimWording, maxWording } from '../readers/wording-claim.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerClaim } from '../words/claim.ts';

const request = z.strictObject({
  wording: z
    .string()
    .trim()
    .min(2, 'Say the wording as it would stand on the label.')
    .max(maxWording, `I judge at most ${maxWording} characters at once.`),
  region: z.enum(regions).optional(),
});
export type ClaimWish = z.output<typeof request>;

const spoken = ({ wording, region }: SlashValues): string =>
  `claim "${String(wording).replaceAll('"', "'")}"${region === undefined ? '' : `, region ${region}`}`;

export const claim = topic({
  name: 'claim',
  summary: 'Does a wording read as cosmetic or as medicinal, and what to say instead.',
  request,
  examples: [
    { say: 'can I say it heals cracked lips', means: { wording: 'it heals cracked lips' } },
    { say: 'is "soothes dry lips" ok on a label', means: { wording: 'soothes dry lips' } },
    { say: 'may I write "SPF 15", region us', means: { wording: 'SPF 15', region: 'us' } },
  ],
  slash: {
    options: z.object({
      wording: z.string().max(maxWording).describe('The wording as it would stand on the label'),
      region: z.enum(regions).optional().describe('Whose rules, if not your group’s'),
    }),
    say: spoken,
  },
  read: claimWording,
  answer: answerClaim,
});
