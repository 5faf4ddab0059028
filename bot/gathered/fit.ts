import { ingredientById } from '../../core/ingredients.ts';
import type { Slot } from '../likeness/features.ts';
import { isIngredientKind, type SlotKind, slotKindOf } from '../likeness/pieces.ts';

/** How far an amount may stand from what it is an amount of. */
const farthest = 40;
/** "Thyme, 18 g" is told as well as "18 g thyme", but less often. */
const behind = 6;
const comma = 10;
/** "45 g in jojoba", "40 g + sunflower oil": not of what follows. */
const apart = /[,+&]|\b(?:and|plus|in|into|with|to|for|from|on)\b/i;
const isAmount = ({ kind }: Slot): boolean => /^(?:g|v|%|d|size)$/.test(kind);

/** Which ingredient each amount belongs to, the nearest first; none where nothing is near. */
export const ownersIn = (slots: readonly Slot[], text: string, most = farthest): ReadonlyMap<Slot, Slot> => {
  const pairs = slots.filter(isAmount).flatMap((amount) =>
    slots
      .filter(({ kind }) => isIngredientKind(kind))
      .map((thing) => {
        const [from, to] = thing.from > amount.from ? [amount.to, thing.from] : [thing.to, amount.from];
        const between = text.slice(from, to);
        const stop = (/[.!?;]\s|\n/.test(between) ? farthest : 0) + (apart.test(between) ? comma : 0);
        return { amount, thing, gap: between.length + stop + (thing.from > amount.from ? 0 : behind) };
      }),
  );
  const owners = new Map<Slot, Slot>();
  const taken = new Set<Slot>();
  for (const { amount, thing, gap } of pairs.toSorted((a, b) => a.gap - b.gap)) {
    if (gap > most || owners.has(amount) || taken.has(thing)) continue;
    owners.set(amount, thing);
    taken.add(thing);
  }
  return owners;
};

/** "Lavender" may be the herb as well as the oil of it; its name where a form wants the herb. */
const nameAs = (kind: SlotKind, slot: Slot): string | undefined => {
  if (kind === 'i' || slot.kind === kind) return slot.text;
  const same = (slot.ingredients ?? []).filter((id) => slotKindOf(id) === kind);
  return same.length === 1 ? ingredientById(same[0] ?? '')?.name : undefined;
};

/** "One part beeswax to three parts oil" is a list of two lines. */
const inParts = /\s+to\s+(?=[\w./-]+\s+parts?\b)/gi;
/** "Tins hold 20 g" of what is filled, "bottle has 400 g" of what is kept. */
const holding = /^\p{L}+\s+(?:hold|holds|holding|have|has|with|take|takes)\s+/iu;
const inStore = /^(?:bottle|jug|bag|bucket|canister)s?\s+(?:hold|holds|have|has|with|of)\s+(.+)$/i;

/** What a slot of a message comes to in a form's place; undefined where it does not belong there. */
const valueFor = (open: Slot, slot: Slot): string | undefined => {
  if (isIngredientKind(open.kind)) return isIngredientKind(slot.kind) ? nameAs(open.kind, slot) : undefined;
  if (open.kind === 'size' && slot.kind === 'size') return slot.text.replace(holding, '');
  if (open.kind === slot.kind) return open.kind === 'R' ? slot.text.replace(inParts, ', ') : slot.text;
  if (open.kind === 'size' && /^[gv]$/.test(slot.kind)) return slot.text;
  return slot.kind === 'size' ? inStore.exec(slot.text)?.[1] : undefined;
};

interface Fitting {
  readonly open: readonly Slot[];
  readonly owners: ReadonlyMap<Slot, Slot>;
  readonly saidOwners: ReadonlyMap<Slot, Slot>;
}

const ownersAgree = ({ owners, saidOwners }: Fitting, chosen: ReadonlyMap<Slot, Slot>): boolean =>
  [...owners].every(([amount, thing]) => {
    const said = saidOwners.get(chosen.get(amount) as Slot);
    return said === undefined || said === chosen.get(thing);
  });

/** Puts a message's things into a form's places, every one into one; the first way that agrees with what belongs to what. */
const placed = (
  fitting: Fitting,
  left: readonly Slot[],
  agrees: (chosen: ReadonlyMap<Slot, Slot>) => boolean,
  chosen: ReadonlyMap<Slot, Slot> = new Map(),
): ReadonlyMap<Slot, Slot> | undefined => {
  const open = fitting.open[chosen.size];
  if (!open) return left.length === 0 && ownersAgree(fitting, chosen) && agrees(chosen) ? chosen : undefined;
  for (const slot of left) {
    if (valueFor(open, slot) === undefined) continue;
    const found = placed(
      fitting,
      left.filter((other) => other !== slot),
      agrees,
      new Map([...chosen, [open, slot]]),
    );
    if (found) return found;
  }
  return undefined;
};

/** In a plain form an amount stands right before what it is an amount of. */
const close = 10;

/**
 * A plain form with a message's things in its places; undefined where they do not go.
 * @param agrees says whether things may stand where they were put.
 */
export const filled = (
  plain: string,
  open: readonly Slot[],
  said: readonly Slot[],
  text: string,
  agrees: (chosen: ReadonlyMap<Slot, Slot>) => boolean,
): string | undefined => {
  const fitting = { open, owners: ownersIn(open, plain, close), saidOwners: ownersIn(said, text) };
  const chosen = placed(fitting, said, agrees);
  if (!chosen) return undefined;
  const values = new Map(
    [...chosen].map(([slot, thing]) => [slot.text, valueFor(slot, thing) ?? thing.text]),
  );
  return plain.replace(/\{[a-zA-Z%]{1,8}\d?\}/g, (place) => values.get(place) ?? place);
};
