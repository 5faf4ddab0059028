import type { Baths, JugPlan } from './jugs.ts';

/** Things to have on the bench. The bot writes their names. */
export const equipment = [
  'containers',
  'labels',
  'scales',
  'bowls',
  'jugs',
  'hot-plates',
  'pans',
  'pan-lids',
  'stands',
  'thermometers',
  'stirrers',
  'oven-gloves',
  'gloves',
  'aprons',
  'spatulas',
  'trays',
  'kettle',
  'fire-blanket',
  'running-water',
  'first-aid',
  'alcohol-ml',
  'paper-rolls',
  'bin-bags',
  'pens',
  'cloths',
] as const;
export type EquipmentName = (typeof equipment)[number];

export interface Equipment {
  readonly what: EquipmentName;
  readonly count: number;
}

/** People who share a scale (house choice). */
const peoplePerScale = 4;

export const scalesFor = (people: number): number => Math.ceil(people / peoplePerScale);

export interface EquipmentRequest {
  readonly people: number;
  /** Containers with the spare ones. */
  readonly containers: number;
  readonly jugPlans: readonly JugPlan[];
  readonly baths: Baths;
  readonly infusions: number;
}

/** Bowls for weighing into: one to a person and line is too many to wash, so one to a person and one to spare a scale. */
const bowlsFor = (people: number): number => people + scalesFor(people);

/** Containers that stand on one tray to set (house choice). */
const containersPerTray = 24;

/** Disinfecting alcohol in ml: a small bottle for a bench of six, and more for more (house choice). */
const alcoholMl = (people: number): number => Math.max(250, Math.ceil(people / 6) * 125);

/** The kit list, counted for this many people. Counts are house choices, no source. */
export const equipmentFor = (request: EquipmentRequest): readonly Equipment[] => {
  const { people, containers, jugPlans, baths, infusions } = request;
  const jugs = jugPlans.reduce((sum, plan) => sum + plan.jugs, 0);
  const counts: Readonly<Record<EquipmentName, number>> = {
    containers,
    labels: containers,
    scales: scalesFor(people),
    bowls: bowlsFor(people),
    jugs,
    'hot-plates': baths.atOnce,
    pans: baths.atOnce,
    'pan-lids': baths.atOnce,
    stands: baths.atOnce,
    thermometers: baths.atOnce,
    stirrers: jugs,
    'oven-gloves': baths.atOnce,
    gloves: people + 2,
    aprons: people + 1,
    spatulas: people + jugs,
    trays: Math.ceil(containers / containersPerTray),
    kettle: 1,
    'fire-blanket': 1,
    'running-water': 1,
    'first-aid': 1,
    'alcohol-ml': alcoholMl(people),
    'paper-rolls': Math.ceil(people / 6),
    'bin-bags': Math.ceil(people / 8),
    pens: Math.ceil(people / 2),
    cloths: infusions,
  };
  return equipment.map((what) => ({ what, count: counts[what] })).filter(({ count }) => count > 0);
};
