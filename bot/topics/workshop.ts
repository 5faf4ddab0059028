import { z } from 'zod';
import { maxLines, recipeLine, recipeName } from '../../core/recipe.ts';
import { claimWorkshop } from '../readers/workshop-claim.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerWorkshop } from '../words/workshop.ts';

const example = 'workshop for 12 people, 2 tins of 15 ml each, Fernlea hand balm';

const count = (most: number, least: string, tooMany: string) =>
  z.int(`That has to be a whole number. For example "${example}".`).min(1, least).max(most, tooMany);

const making = z.strictObject({
  recipe: recipeName.optional(),
  lines: z.array(recipeLine).max(maxLines, `A recipe has at most ${maxLines} lines.`).optional(),
  /** Containers for each person. */
  each: count(
    100,
    `Each person makes at least one. For example "${example}".`,
    `More than 100 for each person is no workshop but a factory. For example "${example}".`,
  ),
  size: z.strictObject({
    amount: z
      .number()
      .gt(0, `What one container holds has to be more than zero. For example "${example}".`)
      .max(10_000, `One container holds at most 10,000 g or ml here. For example "${example}".`),
    unit: z.enum(['g', 'ml']),
  }),
  container: z.string().max(30),
  /** One of the recipe's oils is infused before the day. */
  infusion: z
    .strictObject({
      herb: z.string().max(60),
      oil: z.string().max(60).optional(),
      ratio: z
        .number()
        .min(1, 'An infusion takes at least as much oil as herb. Try "1:8".')
        .max(100, 'That is hardly any herb. Try "1:8".')
        .optional(),
    })
    .optional(),
});

const request = z.strictObject({
  people: count(
    500,
    `A workshop needs at least one person. For example "${example}".`,
    `More than 500 people is more than one workshop can hold. Plan several, for example "${example}".`,
  ),
  makings: z.array(making).min(1).max(4, 'At most four recipes in one workshop. Plan two workshops.'),
  /** When people arrive, "14:00". */
  start: z
    .string()
    .regex(/^(?:[01]\d|2[0-3]):[0-5]\d$/, 'A day has 24 hours of 60 minutes. For example "start at 14:00".')
    .optional(),
  /** The day as it was said: "Saturday". */
  day: z.string().max(40).optional(),
  room: z.string().max(60).optional(),
  roomC: z
    .number()
    .min(5, 'That is too cold for a workshop. For example "room at 18 C".')
    .max(45, 'That is too hot for a workshop. For example "room at 18 C".')
    .optional(),
  hotPlates: count(
    50,
    'Melting needs at least one hot plate. For example "3 hot plates".',
    'At most 50 hot plates. For example "3 hot plates".',
  ).optional(),
  jugs: count(
    200,
    'Melting needs at least one jug. For example "4 jugs of 500 ml".',
    'At most 200 jugs. For example "4 jugs of 500 ml".',
  ).optional(),
  jugMl: z
    .number()
    .min(50, 'A jug of less than 50 ml is too small to melt in. For example "jugs of 500 ml".')
    .max(20_000, 'A jug of more than 20 litres is too heavy to pour hot. For example "jugs of 500 ml".')
    .optional(),
  sparePercent: z
    .number()
    .min(0, 'The spare cannot be below zero. For example "spare 10 %".')
    .max(100, 'At most as much again as spare. For example "spare 10 %".')
    .optional(),
  lossPercent: z.number().min(0, 'The loss cannot be below zero.').max(50, 'Try "loss 5 %".').optional(),
  stepG: z.union([z.literal(1), z.literal(0.1), z.literal(0.01), z.literal(0.001)]).optional(),
  children: z.boolean().optional(),
  /** Ounces beside the grams in this answer, whatever the group's units are. */
  units: z.enum(['g', 'oz']).optional(),
  allergies: z
    .array(z.enum(['nuts', 'bee', 'daisy', 'wool', 'food']))
    .max(5)
    .optional(),
  /** Minutes there are in all. */
  minutes: z.number().min(15, 'Try for example "we have 2 hours".').max(1440).optional(),
});
export type WorkshopWish = z.output<typeof request>;
export type WorkshopMaking = WorkshopWish['makings'][number];

const spoken = (values: SlashValues): string => {
  const { people, recipe, each, size, start, hot_plates, jug, spare } = values;
  const parts = [
    `workshop for ${people} people`,
    each === undefined && size === undefined ? '' : `${each ?? 1} tins of ${size ?? '15 ml'} each`,
    `${recipe}`,
    start === undefined ? '' : `start at ${start}`,
    hot_plates === undefined ? '' : `${hot_plates} hot plates`,
    jug === undefined ? '' : `jugs of ${jug}`,
    spare === undefined ? '' : `spare ${spare} %`,
  ];
  return parts.filter(Boolean).join(', ');
};

export const workshop = topic({
  name: 'workshop',
  summary: 'Plan a workshop: kits for each person, jugs, shopping, safety, the day, a handout to print.',
  request,
  examples: [
    {
      say: example,
      means: {
        people: 12,
        makings: [
          { recipe: 'Fernlea hand balm', each: 2, size: { amount: 15, unit: 'ml' }, container: 'tin' },
        ],
      },
      demo: 'Fernlea hand balm',
    },
    {
      say: 'plan a class on Saturday at 10 with 8 makers, each makes one 30 ml tin of Fernlea hand balm and one stick of 5 g of Fernlea mint lip balm',
      means: { people: 8, start: '10:00', day: 'Saturday' },
      demo: 'Fernlea hand balm',
    },
    {
      say: 'workshop for a dozen people, 2 tins of 15 ml each, 20% beeswax, 30% shea butter, 50% olive oil, 2 hot plates, jugs of 250 ml, start 14:00, spare 15%',
      means: { people: 12, hotPlates: 2, jugMl: 250, start: '14:00', sparePercent: 15 },
    },
  ],
  slash: {
    options: z.object({
      people: z.int().min(1).max(500).describe('How many people'),
      recipe: z.string().max(1000).describe('A saved recipe, or one written out'),
      each: z.int().min(1).max(100).optional().describe('How many tins each person makes'),
      size: z.string().max(30).optional().describe('What each tin holds, for example 15 ml'),
      start: z.string().max(10).optional().describe('When people arrive, for example 14:00'),
      hot_plates: z.int().min(1).max(50).optional().describe('How many hot plates there are'),
      jug: z.string().max(20).optional().describe('What a melting jug holds, for example 500 ml'),
      spare: z.number().min(0).max(100).optional().describe('Spare to set aside, in percent'),
    }),
    complete: { recipe: 'recipe' },
    say: spoken,
  },
  read: claimWorkshop,
  answer: answerWorkshop,
});
