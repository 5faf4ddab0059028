import type { Equipment, EquipmentName } from '../../core/workshop/equipment.ts';
import { hygiene } from '../../core/workshop/hygiene.ts';
import type { Planned } from './workshop-plan.ts';

type Words = readonly [one: string, several: string];

const names: Readonly<Record<EquipmentName, Words>> = {
  containers: ['container', 'containers'],
  labels: ['label', 'labels'],
  scales: ['scale', 'scales'],
  bowls: ['dry bowl', 'dry bowls'],
  jugs: ['jug', 'jugs'],
  'hot-plates': ['hot plate', 'hot plates'],
  pans: ['pan for the water bath', 'pans for the water baths'],
  'pan-lids': ['lid to smother it', 'lids to smother them'],
  stands: ['stand or folded cloth under the jug', 'stands or folded cloths under the jugs'],
  thermometers: ['thermometer', 'thermometers'],
  stirrers: ['stirrer', 'stirrers'],
  'oven-gloves': ['pair of dry oven gloves', 'pairs of dry oven gloves'],
  gloves: ['pair of thin gloves', 'pairs of thin gloves'],
  aprons: ['apron', 'aprons'],
  spatulas: ['single-use spatula', 'single-use spatulas'],
  trays: ['flat tray to set on', 'flat trays to set on'],
  kettle: ['kettle for hot top-up water', 'kettles for hot top-up water'],
  'fire-blanket': ['fire blanket', 'fire blankets'],
  'running-water': ['tap with cool running water', 'taps with cool running water'],
  'first-aid': ['first-aid box', 'first-aid boxes'],
  'alcohol-ml': ['ml of alcohol', 'ml of alcohol'],
  'paper-rolls': ['roll of kitchen paper', 'rolls of kitchen paper'],
  'bin-bags': ['bin bag', 'bin bags'],
  pens: ['pen', 'pens'],
  cloths: ['dry straining cloth', 'dry straining cloths'],
};

const textOf = ({ what, count }: Equipment, jugs: string, container: string): string => {
  if (what === 'alcohol-ml')
    return `${count} ml of ${hygiene.alcoholPercent.value[0]} % alcohol, to be put away closed`;
  if (what === 'jugs') return jugs;
  const word = names[what][count === 1 ? 0 : 1];
  return what === 'containers' && container !== ''
    ? `${count} ${container}${count === 1 ? '' : 's'} with lids`
    : `${count} ${word}`;
};

/** The container's word where all recipes fill the same; else none. */
const commonContainer = ({ makings }: Planned): string => {
  const words = new Set(makings.map(({ container }) => container));
  return words.size === 1 ? ([...words][0] ?? '') : '';
};

const jugsText = ({ plan }: Planned): string => {
  const bySize = new Map<number, number>();
  for (const { jugs } of plan.recipes) bySize.set(jugs.jugMl, (bySize.get(jugs.jugMl) ?? 0) + jugs.jugs);
  return [...bySize]
    .map(([ml, count]) => `${count} heat-proof ${count === 1 ? 'jug' : 'jugs'} of ${ml} ml`)
    .join(', ');
};

/** The kit list, one thing an entry, spare containers counted in. */
export const kitTexts = (planned: Planned): readonly string[] =>
  planned.plan.equipment.map((each) => textOf(each, jugsText(planned), commonContainer(planned)));
