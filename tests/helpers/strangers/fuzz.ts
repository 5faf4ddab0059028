import fc from 'fast-check';
import { slashCommands } from '../../../bot/slash.ts';
import { topics } from '../../../bot/topics.ts';
import { dice } from '../dice.ts';
import { mutated } from '../mutations.ts';
import { phraseTables } from '../phrases.ts';
import { type Action, type GivenText, Maker, type Stock } from './actions.ts';
import { type Group, groupsFrom, keptKinds, planted } from './groups.ts';
import { type Shown, World } from './world.ts';

// Groups that know nothing of each other ask at the same time, all of one bot; and some of them once more, the same things,
// of a bot that has no other group. Whatever differs came from somebody else's book.

export interface FuzzSetup {
  readonly seed: number;
  /** How many things are done, in all groups together, by members of the shared bot. */
  readonly rounds: number;
}

/** Groups that ask a bot of their own once more; others at another seed. */
const mostCompared = 2;

export interface Fuzzed {
  readonly actions: number;
  readonly byKind: Readonly<Record<string, number>>;
  /** Markers of other groups that somebody was shown, with what was done. */
  readonly leaks: readonly string[];
  /** Answers that would have been others in a bot without other groups. */
  readonly differences: readonly string[];
  /** What is wrong with an answer in itself. */
  readonly amiss: readonly string[];
  /** Lines of the log with a secret, or a word of a member, in them. */
  readonly told: readonly string[];
  readonly faults: readonly unknown[];
  readonly problems: readonly string[];
  /** Of all secrets, those that were shown to their own group: what the search could have found. */
  readonly shownAtHome: number;
  readonly secrets: number;
  /** Searches of an answer for somebody else's secret that the asker had never been told. */
  readonly searches: number;
  /** Answers compared with those of a bot without other groups. */
  readonly compared: number;
  readonly refusals: number;
  readonly logLines: number;
}

const startMs = Date.UTC(2026, 10, 25, 9);
const unfit = /\bundefined\b|\bNaN\b|\[object /;
const faulty = /Something went wrong on my side|\(fault |\(Fault /;

/** Ids of faults are made up anew each time. */
const textOf = ({ texts, blobs }: Shown): string =>
  [...texts, ...blobs].join('\n').replace(/\(Fault [0-9a-f]{8}\)/g, '(Fault)');

const begin = async (world: World, groups: readonly Group[]): Promise<void> => {
  for (const group of groups) {
    let batch = '';
    for (const [at, text] of planted(group).entries()) {
      const reply = await world.hear(
        group,
        group.people[0],
        text.replaceAll('{batch}', batch),
        startMs + at * 1000,
      );
      if ('error' in reply) throw new Error(`could not plant "${text}": ${reply.error.text}`);
      if (reply.topic === 'batch' && batch === '') batch = String(reply.answer.figures.lot);
    }
  }
};

const inputOf = (action: Action): string => {
  const { person: _, ...said } = action;
  const text = JSON.stringify(said);
  const plain = text.replaceAll('+', ' ');
  try {
    return `${text} ${decodeURIComponent(plain)}`;
  } catch {
    return `${text} ${plain.replaceAll('%20', ' ')}`;
  }
};

const markersOf = ({ secrets: { kept } }: Group): readonly string[] => keptKinds.map((kind) => kept[kind]);

/** A search for recipes takes a hundred times as long as any other answer, so it is not in every run. */
const dear = 'design.json';

const lastOf = <T>(list: readonly T[], most: number): readonly T[] => list.slice(-most);

/** What every group asks about its own book first: whatever is looked for in others' answers is then shown at home. */
const ownQuestions = [
  'export',
  'history',
  'list reactions',
  'what is out of the house',
  'what are my prices',
];

export class Fuzz {
  readonly #groups: readonly Group[];
  readonly #shared: World;
  readonly #alone: ReadonlyMap<Group, World>;
  readonly #makers: ReadonlyMap<Group, Maker>;
  readonly #stock: Stock & {
    readonly ids: Map<Group, readonly string[]>;
    readonly files: Map<Group, readonly GivenText[]>;
  };
  /** Secrets of others that were said in a group, because it was given a button or file of theirs. */
  readonly #told = new Map<Group, Set<string>>();
  readonly #home = new Set<string>();
  readonly #result = {
    byKind: {} as Record<string, number>,
    leaks: [] as string[],
    differences: [] as string[],
    amiss: [] as string[],
    searches: 0,
    compared: 0,
    refusals: 0,
  };

  private constructor(seed: number) {
    this.#groups = groupsFrom(seed);
    this.#shared = new World(this.#groups);
    const compared = this.#groups.map((_, at) => this.#groups[(seed + at) % this.#groups.length] as Group);
    this.#alone = new Map(compared.slice(0, mostCompared).map((group) => [group, new World([group])]));
    this.#makers = new Map(
      this.#groups.map((group, at) => [group, new Maker(group, this.#groups, dice(seed * 31 + at))]),
    );
    const phrases = phraseTables()
      .filter(({ file }) => dear !== file || seed % 10 === 0)
      .flatMap(({ phrases: list }) => list.map(({ say }) => say));
    this.#stock = {
      phrases,
      slips: fc.sample(mutated(phrases), { numRuns: 2000, seed }),
      commands: slashCommands(topics),
      ids: new Map(),
      files: new Map(),
    };
  }

  static async run({ seed, rounds }: FuzzSetup): Promise<Fuzzed> {
    const fuzz = new Fuzz(seed);
    await begin(fuzz.#shared, fuzz.#groups);
    for (const [group, world] of fuzz.#alone) await begin(world, [group]);
    for (const [place, text] of ownQuestions.entries())
      await fuzz.#together((group) => ({
        kind: 'hear',
        person: group.people[0],
        at: startMs + 1000 * (place + 1),
        text,
      }));
    let actions = 0;
    for (let at = startMs + 60_000; actions < rounds; at += fuzz.#groups.length + 7919) {
      await fuzz.#round(at);
      actions += fuzz.#groups.length;
    }
    return fuzz.#ended(actions);
  }

  #round(at: number): Promise<void> {
    return this.#together((group, place) => this.#makers.get(group)?.next(this.#stock, at + place) as Action);
  }

  /** Has every group do something, and looks at what it is shown. */
  async #together(next: (group: Group, place: number) => Action): Promise<void> {
    const actions = this.#groups.map(next);
    // All at once in the shared bot: what two of them do may cross on its way.
    const shown = await Promise.all(
      this.#groups.map((group, place) => this.#shared.do(group, actions[place] as Action)),
    );
    for (const [place, group] of this.#groups.entries()) {
      const action = actions[place] as Action;
      const same = await this.#alone.get(group)?.do(group, action);
      this.#judge(group, action, shown[place] as Shown, same);
    }
  }

  #judge(group: Group, action: Action, shown: Shown, alone: Shown | undefined): void {
    const { byKind, leaks, differences, amiss } = this.#result;
    byKind[action.kind] = (byKind[action.kind] ?? 0) + 1;
    const all = textOf(shown);
    const input = inputOf(action);
    const about = (what: string): string => `${group.id} ${input.slice(0, 600)}\n=> ${what}`;
    if (alone) {
      this.#result.compared += 1;
      if (all !== textOf(alone)) differences.push(about(firstDifference(all, textOf(alone))));
    }
    if (isAmiss(action, shown)) amiss.push(about(all.slice(0, 800)));
    if (/"error":\{/.test(all)) this.#result.refusals += 1;
    for (const marker of this.#leaked(group, input, all))
      leaks.push(`${marker} in ${about(all.slice(0, 800))}`);
    this.#keep(group, shown);
  }

  /** Secrets of others in what was shown, that nobody in this group had ever been given. */
  #leaked(group: Group, input: string, all: string): readonly string[] {
    for (const marker of markersOf(group)) if (all.includes(marker)) this.#home.add(marker);
    const told = this.#told.get(group) ?? new Set();
    this.#told.set(group, told);
    const leaked: string[] = [];
    for (const marker of this.#groups.flatMap((other) => (other === group ? [] : markersOf(other)))) {
      if (input.includes(marker)) told.add(marker);
      if (told.has(marker)) continue;
      this.#result.searches += 1;
      if (all.includes(marker)) leaked.push(marker);
    }
    return leaked;
  }

  /** Ids and files that were shown may be tried by others; with a secret in them, by the nosy group alone. */
  #keep(group: Group, { ids, files }: Shown): void {
    this.#stock.ids.set(group, lastOf([...(this.#stock.ids.get(group) ?? []), ...ids], 300));
    this.#stock.files.set(
      group,
      lastOf(
        [...(this.#stock.files.get(group) ?? []), ...files.filter(({ text }) => text.length < 200_000)],
        6,
      ),
    );
  }

  async #ended(actions: number): Promise<Fuzzed> {
    const markers = this.#groups.flatMap(markersOf);
    const log = [this.#shared, ...this.#alone.values()].flatMap((world) => world.log);
    const worlds = [this.#shared, ...this.#alone.values()];
    for (const world of worlds) await world.close();
    return {
      ...this.#result,
      actions,
      told: log.filter((line) => markers.some((marker) => line.includes(marker))),
      faults: worlds.flatMap(({ faults }) => faults),
      problems: worlds.flatMap(({ chat }) => chat.problems),
      shownAtHome: this.#home.size,
      secrets: markers.length,
      logLines: log.length,
    };
  }
}

/** A message without words, or a first request that was refused, may well end in silence. */
const answers = (action: Action): boolean => {
  if (action.mishap === 'refused' || action.kind === 'typing' || action.kind === 'complete') return false;
  return !('text' in action) || action.text.trim() !== '';
};

/** What a member typed may be shown back to them, "NaN" too. */
const isUnfit = (action: Action, shown: string): boolean =>
  unfit.test(shown) && !unfit.test(JSON.stringify(action));

const isAmiss = (action: Action, { texts }: Shown): boolean => {
  const all = texts.join('\n');
  if (isUnfit(action, all) || (texts.length === 0 && answers(action))) return true;
  return faulty.test(all) && action.mishap === undefined;
};

const firstDifference = (one: string, other: string): string => {
  let at = 0;
  while (at < one.length && one[at] === other[at]) at += 1;
  const from = Math.max(0, at - 80);
  return `${JSON.stringify(one.slice(from, at + 160))} instead of ${JSON.stringify(other.slice(from, at + 160))}`;
};
