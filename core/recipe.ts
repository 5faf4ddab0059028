import { z } from 'zod';

/**
 * How much of an ingredient a maker wrote, in the unit they wrote it in. Percent is by weight of what goes into the
 * containers; parts are by weight; `rest` fills up to 100 % ("q.s.").
 */
export const recipeUnits = [
  'g',
  'kg',
  'mg',
  'oz',
  'lb',
  'ml',
  'cl',
  'dl',
  'l',
  'tsp',
  'tbsp',
  'cup',
  'fl oz',
  'drop',
  'percent',
  'part',
  'rest',
] as const;
export type RecipeUnit = (typeof recipeUnits)[number];

/** Longest a name may be, in characters; long enough for a title, short enough for a slash-command choice. */
export const maxNameLength = 80;
/** Most lines one recipe may have. */
export const maxLines = 60;

/**
 * One line as written. `strained` marks an herb that is weighed but taken out again before filling; `doubtful` is the name
 * as it was typed where it may be a restricted plant too ("marigold").
 */
export const recipeLine = z.strictObject({
  ingredient: z.string().min(1).max(60),
  amount: z.number().nonnegative().finite(),
  unit: z.enum(recipeUnits),
  strained: z.boolean().optional(),
  infusedWith: z.string().max(60).optional(),
  fresh: z.boolean().optional(),
  doubtful: z.string().max(40).optional(),
});
export type RecipeLine = z.output<typeof recipeLine>;

export const recipeLines = z.array(recipeLine).min(1).max(maxLines);
export const recipeName = z.string().trim().min(1).max(maxNameLength);

/** A recipe ready for sums: lines as written, with its name and version when it is a saved one. */
export interface Recipe {
  readonly name?: string;
  readonly version?: number;
  readonly lines: readonly RecipeLine[];
}
