/** Steps of a workshop day, in the order they come. */
export const workshopSteps = [
  'ask',
  'infuse',
  'wash',
  'set-up',
  'warm-baths',
  'welcome',
  'weigh',
  'melt',
  'pour',
  'set',
  'label',
  'clean',
  'hand-out',
] as const;
export type WorkshopStep = (typeof workshopSteps)[number];

/** One entry of the timeline. Minutes count from the moment people arrive; before it they are below zero. */
export interface TimelineEntry {
  readonly step: WorkshopStep;
  readonly atMin: number;
  readonly minutes: number;
  /** Rounds of melting that this entry is about, first and last; where there is more than one round. */
  readonly rounds?: readonly [number, number];
}

export interface TimelineRequest {
  readonly people: number;
  readonly scales: number;
  /** Lines that one person weighs, over all recipes. */
  readonly lines: number;
  readonly rounds: number;
  readonly jugs: number;
  readonly gramsFullest: number;
  /** Containers of everybody together, and what the largest holds in grams. */
  readonly containers: number;
  readonly largestFillG: number;
  readonly infusesAhead: boolean;
  /** How many times longer than in a room of 20 °C the tins take to set. */
  readonly settingFactor: number;
}

const day = 24 * 60;

/** All times are common practice and house choices, no source: rough, and on the generous side. */
const minutes = {
  setUp: 30,
  warmBaths: 30,
  setUpBefore: 60,
  welcome: 15,
  weighLine: 1.5,
  meltLeast: 20,
  meltPer100g: 5,
  meltMost: 60,
  pourEach: 0.75,
  label: 15,
  clean: 20,
  handOut: 10,
} as const;

/** Weeks before to ask, and days before for oil and washing-up. */
const before = { ask: 7 * day, infuse: 2 * day, wash: day } as const;

/** More rounds than this are told together: nobody reads a plan of thirty lines. */
const mostRoundsTold = 3;

const toFive = (value: number): number => Math.max(5, Math.ceil(value / 5 - 1e-9) * 5);

/** Minutes until a filled container is firm enough to be closed, at 20 °C, by what it holds in grams. */
const settingMin = (fillG: number): number => {
  if (fillG <= 8) return 20;
  if (fillG <= 20) return 30;
  if (fillG <= 40) return 45;
  return fillG <= 80 ? 60 : 90;
};

interface Durations {
  readonly weigh: number;
  readonly melt: number;
  readonly pour: number;
  readonly set: number;
}

const durationsOf = (request: TimelineRequest): Durations => {
  const perScale = Math.ceil(request.people / request.scales);
  const melt = minutes.meltLeast + (minutes.meltPer100g * request.gramsFullest) / 100;
  const perJug = request.containers / request.jugs;
  return {
    weigh: toFive(minutes.weighLine * request.lines * perScale),
    melt: toFive(Math.min(minutes.meltMost, melt)),
    pour: toFive(perJug * minutes.pourEach),
    set: toFive(settingMin(request.largestFillG) * request.settingFactor),
  };
};

const ahead = (infuses: boolean): TimelineEntry[] => [
  { step: 'ask', atMin: -before.ask, minutes: 0 },
  ...(infuses ? [{ step: 'infuse', atMin: -before.infuse, minutes: 0 } as const] : []),
  { step: 'wash', atMin: -before.wash, minutes: 0 },
  { step: 'set-up', atMin: -minutes.setUpBefore, minutes: minutes.setUp },
  { step: 'welcome', atMin: 0, minutes: minutes.welcome },
];

/** A round after another starts when the jugs of the one before are off the bath; they are poured meanwhile. */
const meltRounds = (rounds: number, from: number, { melt, pour }: Durations): TimelineEntry[] => {
  if (rounds === 1) {
    return [
      { step: 'melt', atMin: from, minutes: melt },
      { step: 'pour', atMin: from + melt, minutes: pour },
    ];
  }
  const each = Math.max(melt, pour);
  if (rounds > mostRoundsTold) {
    return [
      { step: 'melt', atMin: from, minutes: each * rounds, rounds: [1, rounds] },
      { step: 'pour', atMin: from + melt, minutes: each * (rounds - 1) + pour, rounds: [1, rounds] },
    ];
  }
  return Array.from({ length: rounds }, (_, at): TimelineEntry[] => {
    const start = from + each * at;
    return [
      { step: 'melt', atMin: start, minutes: melt, rounds: [at + 1, at + 1] },
      { step: 'pour', atMin: start + melt, minutes: pour, rounds: [at + 1, at + 1] },
    ];
  }).flat();
};

const endOf = (entries: readonly TimelineEntry[]): number =>
  Math.max(...entries.map(({ atMin, minutes: takes }) => atMin + takes));

/**
 * The plan of the day, in order of time: what is done before, then set up, weigh, melt in rounds, pour, let set, label,
 * clean, hand out. Labels are written and the bench is cleaned while the balm sets.
 */
export const timelineOf = (request: TimelineRequest): readonly TimelineEntry[] => {
  const durations = durationsOf(request);
  const melting = minutes.welcome + durations.weigh;
  const rounds = meltRounds(request.rounds, melting, durations);
  const setting = endOf(rounds);
  const closed = Math.max(setting + durations.set, setting + minutes.label + minutes.clean);
  return [
    ...ahead(request.infusesAhead),
    // While people weigh: alcohol has long dried by then, and no bath boils for nothing.
    {
      step: 'warm-baths',
      atMin: Math.max(0, melting - minutes.warmBaths),
      minutes: minutes.warmBaths,
    } as const,
    { step: 'weigh', atMin: minutes.welcome, minutes: durations.weigh } as const,
    ...rounds,
    { step: 'set', atMin: setting, minutes: durations.set } as const,
    { step: 'label', atMin: setting, minutes: minutes.label } as const,
    { step: 'clean', atMin: setting + minutes.label, minutes: minutes.clean } as const,
    { step: 'hand-out', atMin: closed, minutes: minutes.handOut } as const,
  ].toSorted((a, b) => a.atMin - b.atMin);
};

/** Minutes from people's arrival to the end. */
export const lengthMin = (timeline: readonly TimelineEntry[]): number => endOf(timeline);

/** Temperature in °C for which the setting times are told. */
export const usualRoomC = 20;

/** Setting is not told as longer than this many times the usual. */
const mostTimesLonger = 3;

/**
 * How many times longer a container takes to set in a room than at 20 °C: Newton's law of cooling from pouring to
 * softening. Nothing when the room is as warm as the softening point, so that it does not set there at all.
 */
export const settingFactor = (pourC: number, softensC: number, roomC: number): number | undefined => {
  if (roomC >= softensC - 2) return undefined;
  if (softensC - 2 <= usualRoomC || pourC <= softensC) return 1;
  const time = (room: number): number => Math.log((pourC - room) / (softensC - room));
  return Math.min(mostTimesLonger, time(roomC) / time(usualRoomC));
};
