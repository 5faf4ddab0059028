import { lotKey } from '../../core/bench/codes.ts';
import type { BookEvent } from '../../core/book.ts';
import { nameKey } from '../../core/names.ts';
import type { BookWish } from '../topics/book.ts';
import type { EntryNames } from '../words/book-names.ts';

type About = NonNullable<BookWish['about']>;
type Put = Extract<BookEvent, { readonly kind: 'parts-put' }>['puts'][number];

/** Keys of the lots and batches an event speaks of, those it drew from included. */
const lotKeys = (event: BookEvent): readonly string[] => {
  const own = 'lot' in event && event.lot !== undefined ? [event.lot] : [];
  const drawn = 'draws' in event ? event.draws.map(({ lot }) => lot) : [];
  const lines = event.kind === 'batch-poured' ? event.lines.flatMap(({ draws }) => draws) : [];
  const due = event.kind === 'due-answered' ? [event.item.split(':')[1] ?? ''] : [];
  return [...own, ...drawn, ...lines.map(({ lot }) => lot), ...due].map(lotKey);
};

const ofRecipe = (event: BookEvent, name: string, names: EntryNames): boolean => {
  if ('recipe' in event && typeof event.recipe === 'string') return names.isRecipe(event.recipe, name);
  return event.kind === 'batch-poured' && nameKey(event.name) === nameKey(name);
};

const putAbout = ({ part, id }: Put, about: About, names: EntryNames): boolean => {
  if (part === 'recipe') return about.recipe !== undefined && names.isRecipe(id, about.recipe);
  if (part === 'reaction') return about.reaction === id;
  return (part === 'lot' || part === 'batch') && about.lot !== undefined && id === lotKey(about.lot);
};

/** Names of what an event is about: `lot:K12`, `reaction:R3`, `recipe:winter balm` as it is called in `names`. */
export const aboutKeys = (event: BookEvent, names: EntryNames): readonly string[] => {
  if (event.kind === 'parts-put')
    return event.puts.flatMap(({ part, id }) => {
      if (part === 'recipe') return [`recipe:${nameKey(names.recipe(id))}`];
      if (part === 'reaction') return [`reaction:${id}`];
      return part === 'lot' || part === 'batch' ? [`lot:${id}`] : [];
    });
  return [
    ...lotKeys(event).map((key) => `lot:${key}`),
    ...('id' in event && typeof event.id === 'string' ? [`reaction:${event.id}`] : []),
    ...('recipe' in event && typeof event.recipe === 'string'
      ? [`recipe:${nameKey(names.recipe(event.recipe))}`]
      : []),
    ...(event.kind === 'batch-poured' ? [`recipe:${nameKey(event.name)}`] : []),
  ];
};

/** Whether an event is about a recipe, a lot or batch, or a reaction. */
export const isAbout = (event: BookEvent, about: About, names: EntryNames): boolean => {
  if (event.kind === 'parts-put') return event.puts.some((put) => putAbout(put, about, names));
  if (about.lot !== undefined) return lotKeys(event).includes(lotKey(about.lot));
  if (about.reaction !== undefined) return 'id' in event && event.id === about.reaction;
  return about.recipe !== undefined && ofRecipe(event, about.recipe, names);
};
