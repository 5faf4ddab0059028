interface Entry {
  readonly group: string;
  readonly at: number;
}

/**
 * Which group has to be looked at next. A binary heap beside a map: setting a group anew leaves its old entry in the heap,
 * where it is passed over, so both cost by the logarithm of the groups and never by what is in their books.
 */
export class Agenda {
  readonly #at = new Map<string, number>();
  #heap: Entry[] = [];

  /** Groups on the agenda. */
  get size(): number {
    return this.#at.size;
  }

  /** The instant (epoch ms) set for a group. */
  at(group: string): number | undefined {
    return this.#at.get(group);
  }

  /** Looks at a group again at an instant, or never. */
  set(group: string, at: number | undefined): void {
    if (at === this.#at.get(group)) return;
    if (at === undefined) this.#at.delete(group);
    else {
      this.#at.set(group, at);
      this.#push({ group, at });
    }
    if (this.#heap.length > 64 && this.#heap.length > 2 * this.#at.size) this.#rebuild();
  }

  /** The next instant set for any group. */
  next(): number | undefined {
    this.#dropOld();
    return this.#heap[0]?.at;
  }

  /** Takes the group that comes first off the agenda, if its instant has come. */
  take(now: number): string | undefined {
    this.#dropOld();
    const first = this.#heap[0];
    if (first === undefined || first.at > now) return undefined;
    this.#pop();
    this.#at.delete(first.group);
    return first.group;
  }

  #dropOld(): void {
    for (let first = this.#heap[0]; first !== undefined; first = this.#heap[0]) {
      if (this.#at.get(first.group) === first.at) return;
      this.#pop();
    }
  }

  #rebuild(): void {
    // Sorted by instant, which is a heap already.
    this.#heap = [...this.#at].map(([group, at]) => ({ group, at })).sort((a, b) => a.at - b.at);
  }

  #push(entry: Entry): void {
    const heap = this.#heap;
    let index = heap.push(entry) - 1;
    while (index > 0) {
      const parent = (index - 1) >> 1;
      const above = heap[parent];
      if (above === undefined || above.at <= entry.at) break;
      heap[index] = above;
      index = parent;
    }
    heap[index] = entry;
  }

  #pop(): void {
    const heap = this.#heap;
    const last = heap.pop();
    if (last === undefined || heap.length === 0) return;
    let index = 0;
    for (;;) {
      let child = 2 * index + 1;
      if (child + 1 < heap.length && (heap[child + 1] as Entry).at < (heap[child] as Entry).at) child += 1;
      const below = heap[child];
      if (below === undefined || below.at >= last.at) break;
      heap[index] = below;
      index = child;
    }
    heap[index] = last;
  }
}
