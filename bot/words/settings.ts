import { usualCapMonths } from '../../core/bench/best-before.ts';
import { type Settings, settingsSchema } from '../../core/settings.ts';
import type { Answer } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { SettingsWish } from '../topics/settings.ts';
import { plain } from './numbers.ts';

const regionText = {
  eu: 'EU',
  uk: 'UK',
  us: 'US',
  ca: 'Canada',
  au: 'Australia',
} as const;

const rows = (settings: Settings): string[][] => [
  ['region', regionText[settings.region]],
  ['units', settings.units === 'g' ? 'grams' : 'grams, ounces beside them'],
  ['currency', settings.currency],
  ['scale reads', `${settings.stepG} g`],
  ['loss allowance', `${plain(settings.lossPercent)} %`],
  ['who writes', settings.writerRole === null ? 'every member' : `role ${settings.writerRole}`],
  ['time zone', settings.zone ?? 'UTC (not set)'],
  ['best before', `at most ${settings.capMonths ?? `${usualCapMonths} (usual)`} months`],
  ['decimal sign', settings.decimal ?? 'point'],
];

const rowOf: Readonly<Record<keyof SettingsWish, number>> = {
  region: 0,
  units: 1,
  currency: 2,
  stepG: 3,
  lossPercent: 4,
  writerRole: 5,
  zone: 6,
  capMonths: 7,
  decimal: 8,
};

/** What was changed, as it stands now: "region US, scale reads 0.01 g". */
const changedRows = (wish: SettingsWish, settings: Settings): string[] => {
  const all = rows(settings);
  return (Object.keys(wish) as (keyof SettingsWish)[]).map((key) => (all[rowOf[key]] ?? []).join(' '));
};

const figuresOf = (settings: Settings): Answer['figures'] => ({
  region: settings.region,
  units: settings.units,
  currency: settings.currency,
  step_g: settings.stepG,
  loss_percent: settings.lossPercent,
  writer_role: settings.writerRole,
  zone: settings.zone ?? null,
  cap_months: settings.capMonths ?? null,
  decimal: settings.decimal ?? 'point',
});

/** Both are usual in the EU, so it is offered and not assumed. */
const commas = { label: 'Write 12,5 for 12.5', say: 'decimal comma' };

/** Shows the group's settings, changed first if the wish says so. */
export const answerSettings = async (wish: SettingsWish, tools: Tools): Promise<Answer> => {
  const changes = settingsSchema.partial().parse(wish);
  const changed = Object.keys(changes).length > 0;
  if (changed) {
    await tools.book.record(
      { kind: 'settings-changed', settings: changes },
      { who: tools.member.id, at: tools.at },
    );
  }
  const { settings } = tools.book.state;
  return {
    title: changed ? `Now: ${changedRows(wish, settings).join(', ')}` : 'Settings',
    blocks: [
      {
        kind: 'table',
        columns: [
          { title: '', align: 'left' },
          { title: '', align: 'left' },
        ],
        rows: rows(settings),
      },
      ...(changed
        ? []
        : [
            {
              kind: 'text',
              text: 'Change one by saying it: "region us", "scale reads 0.01 g", "set loss to 5%".',
            } as const,
          ]),
    ],
    figures: figuresOf(settings),
    warnings: [],
    ...(settings.region === 'eu' && settings.decimal === undefined ? { next: [commas] } : {}),
    quiet: !changed,
  };
};
