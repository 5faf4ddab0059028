import { lotKey } from '../../core/bench/codes.ts';
import { type BookEntry, type BookState, benchOf } from '../../core/book.ts';
import { nameKey } from '../../core/names.ts';

/** Names behind the ids that entries hold, as far as the entries read so far tell. */
export class EntryNames {
  readonly #recipes = new Map<string, string>();
  readonly #state: BookState | undefined;

  /** `state` helps where the entries that named something are not among those read. */
  constructor(state?: BookState) {
    this.#state = state;
  }

  /** Takes in what an entry names. */
  read({ event }: BookEntry): void {
    if (event.kind === 'recipe-saved' || event.kind === 'recipe-renamed')
      this.#recipes.set(event.recipe, event.name);
    if (event.kind !== 'parts-put') return;
    for (const { part, value } of event.puts)
      if (part === 'recipe' && value) this.#recipes.set(value.id, value.name);
  }

  /** Takes in what a recipe was called. */
  called(id: string, name: string): void {
    this.#recipes.set(id, name);
  }

  recipe(id: string): string {
    const known = this.#recipes.get(id);
    if (known !== undefined) return known;
    const recipes = this.#state?.recipes ?? {};
    return (Object.hasOwn(recipes, id) ? recipes[id]?.name : undefined) ?? 'a recipe';
  }

  /** Whether an id was ever a recipe of this name. */
  isRecipe(id: string, name: string): boolean {
    return nameKey(this.recipe(id)) === nameKey(name);
  }

  /** What the containers of a batch are called: "tins", or "containers" where the batch is not known. */
  containers(lot: string, count: number): string {
    const batch = this.#state && benchOf(this.#state).batches.get(lotKey(lot));
    return containerText(batch?.container ?? 'container', count);
  }
}

/** "24 tins", "1 tin". */
export const containerText = (container: string, count: number): string =>
  `${count} ${container}${count === 1 || container.endsWith('s') ? '' : 's'}`;
