/** From what a maker types to ingredients: name keys, names as they stand, and names a slip or two off. */
export type { AmbiguousName } from './data/ambiguous-names.ts';
export {
  allNames,
  ambiguousName,
  exactName,
  isOtherThing,
  longestName,
} from './exact-names.ts';
export { nameKey, nameWords, wordKey } from './name-key.ts';
export { clearName, type NearName, nearNames } from './near-names.ts';
