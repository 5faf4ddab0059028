import { lotKey } from '../../core/bench/codes.ts';
import { localDay } from '../../core/bench/days.ts';
import { keepReactionsFor, type ReactionDuty, reactionDuty } from '../../core/bench/deadline.ts';
import type { BenchEvent } from '../../core/bench/events.ts';
import type { Bench, Reaction } from '../../core/bench/state.ts';
import { benchOf } from '../../core/book.ts';
import { defined } from '../../core/defined.ts';
import { nameKey } from '../../core/names.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Answer, Block, NextStep, Trouble, Warning } from '../answer.ts';
import type { Decided } from '../book/keeper.ts';
import { mayWrite, type Tools } from '../topic.ts';
import type { ReactionWish } from '../topics/reaction.ts';
import { findBatch } from './find-lot.ts';
import { localRules } from './warnings.ts';

const emergency: Warning = {
  code: 'emergency',
  text: 'Hard breathing or swelling: emergency number first.',
};

const seeDoctor: Warning = {
  code: 'see-a-doctor',
  text: 'I write down what is told and do not judge it. A pharmacist or doctor does.',
};

const adviceNow: readonly string[] = [
  'Trouble breathing, or a swollen tongue, lips, face or throat: call the emergency number now, before anything else.',
  'Stop using the balm. Wipe it off with a soft cloth, rinse with lukewarm water, put nothing else on.',
  'Keep the tin and its label. Pharmacist or doctor if it lasts, spreads, blisters, or is near the eyes.',
];

const seriousAsked =
  'Ask whether it was serious, and tell me: hospital, danger of death, lasting harm, or not able to do daily things; in the US also infection and serious, lasting rash or change of looks.';

const dutyText = ({ who, soon, by, source, seen }: ReactionDuty): string => {
  const until = by ? `, so by ${by}` : '';
  const how =
    seen === 'memory' ? ' (from memory: check it)' : seen === 'read-secondary' ? ' (read second-hand)' : '';
  return `If it is serious: tell ${who} ${soon}${until}${how}. ${source}.`;
};

const rows = (reaction: Reaction, contacts: boolean): readonly string[] => [
  `What: ${reaction.signs}`,
  `Batch: ${reaction.lot ?? 'not known yet'}`,
  `When: ${reaction.on}${reaction.heardOn === reaction.on ? '' : `, heard of it ${reaction.heardOn}`}`,
  ...(reaction.use ? [`Use: ${reaction.use}`] : []),
  `Serious: ${reaction.serious === undefined ? 'not said' : reaction.serious ? 'yes' : 'no'}`,
  ...(reaction.contact ? [`Contact: ${contacts ? reaction.contact : 'kept, shown to writers only'}`] : []),
  ...reaction.followed.flatMap(({ on, text }) => (text ? [`${on}: ${text}`] : [])),
  ...(reaction.closed ? ['Closed.'] : []),
];

const figuresOf = (reaction: Reaction, tools: Tools) => ({
  id: reaction.id,
  lot: reaction.lot ?? null,
  when: reaction.on,
  signs: reaction.signs,
  serious: reaction.serious ?? null,
  closed: reaction.closed,
  contact: mayWrite(tools) ? (reaction.contact ?? null) : null,
  tell_by: reactionDuty(tools.settings.region, reaction.heardOn).by ?? null,
});

const stepsFor = ({ id, lot, closed }: Reaction): readonly NextStep[] => [
  ...(lot ? [{ label: 'Where it went', say: `trace ${lot}` }] : []),
  ...(closed
    ? []
    : [
        { label: 'It was serious', say: `${id} was serious` },
        { label: 'Close it', say: `close ${id}` },
      ]),
];

const shown = (reaction: Reaction, tools: Tools, title: string, extra: readonly Block[] = []): Answer => {
  const duty = reactionDuty(tools.settings.region, reaction.heardOn);
  const keep = keepReactionsFor(tools.settings.region);
  return {
    title,
    blocks: [
      ...extra,
      { kind: 'list', items: rows(reaction, mayWrite(tools)) },
      ...(reaction.serious === false ? [] : [{ kind: 'text', text: dutyText(duty) } as const]),
      { kind: 'text', text: `Keep this record: ${keep.text}.` },
    ],
    figures: figuresOf(reaction, tools),
    warnings: [emergency, seeDoctor, localRules],
    next: stepsFor(reaction),
    quiet: true,
  };
};

const nextId = ({ reactions }: Bench): string => {
  let last = 0;
  for (const id of reactions.keys()) last = Math.max(last, Number(id.slice(1)));
  return `R${last + 1}`;
};

const notThere = (id: string): Trouble => ({
  code: 'not-found',
  text: `There is no reaction ${id} in this book. Ask "list reactions" to see them.`,
});

const todayIn = ({ at, settings }: Tools): string => localDay(at, settings.zone ?? 'UTC');

type Change = Result<Decided<string>, Trouble>;

const one = (event: BenchEvent, id: string): Change => ok({ events: [event], value: id });

const noted = (wish: ReactionWish, tools: Tools, bench: Bench): Change => {
  const batch = wish.lot === undefined ? undefined : findBatch(wish.lot, bench);
  if (batch && 'code' in batch) return fail(batch);
  const today = todayIn(tools);
  const on = wish.on ?? today;
  if (on > today)
    return fail({
      code: 'out-of-range',
      text: `${on} is still to come. Say the day it happened, for example "yesterday".`,
    });
  const { signs = '', use, contact, serious } = wish;
  const id = nextId(bench);
  const more = defined({ lot: batch?.lot, use, contact: contact ?? undefined, serious });
  return one({ kind: 'reaction-noted', id, on, heardOn: today, signs, ...more }, id);
};

const followed = (wish: ReactionWish, tools: Tools, bench: Bench): Change => {
  const id = wish.id ?? '';
  if (!bench.reactions.has(id)) return fail(notThere(id));
  const batch = wish.lot === undefined ? undefined : findBatch(wish.lot, bench);
  if (batch && 'code' in batch) return fail(batch);
  const { signs: text, serious, closed, contact } = wish;
  const more = defined({ lot: batch?.lot, text, serious, closed });
  const changed = contact === undefined ? more : { ...more, contact };
  return one({ kind: 'reaction-followed', id, on: wish.on ?? todayIn(tools), ...changed }, id);
};

const written = async (wish: ReactionWish, tools: Tools): Promise<Answer | Trouble> => {
  const decide = wish.action === 'note' ? noted : followed;
  const by = { who: tools.member.id, at: tools.at };
  const done = await tools.book.change((state) => decide(wish, tools, benchOf(state)), by);
  if (!done.ok) return done.problem;
  const reaction = benchOf(done.value.state).reactions.get(done.value.value);
  if (!reaction) return notThere(done.value.value);
  if (wish.action === 'follow') return shown(reaction, tools, `Written down: ${reaction.id}`);
  const left = reaction.lot
    ? [`Give out no more of ${reaction.lot} until you know why.`]
    : [`When you know the batch, say "${reaction.id} was 26-BAFO" with its code.`];
  return shown(reaction, tools, `Written down as ${reaction.id}`, [
    {
      kind: 'list',
      items: [...adviceNow, ...left, ...(reaction.serious === undefined ? [seriousAsked] : [])],
    },
  ]);
};

const mostListed = 20;

const listed = (wish: ReactionWish, bench: Bench): Answer | Trouble => {
  const batch = wish.lot === undefined ? undefined : findBatch(wish.lot, bench);
  if (batch && 'code' in batch) return batch;
  const isOf = (lot: string | undefined): boolean => {
    if (batch) return lot === batch.lot;
    if (wish.recipe === undefined) return true;
    const name = lot === undefined ? undefined : bench.batches.get(lotKey(lot))?.name;
    return name !== undefined && nameKey(name) === nameKey(wish.recipe);
  };
  const found = [...bench.reactions.values()].filter(({ lot }) => isOf(lot));
  const lastOnes = found.slice(-mostListed).reverse();
  const about = batch?.lot ?? wish.recipe;
  const of = about === undefined ? '' : ` for ${about}`;
  const list: Block =
    found.length === 0
      ? { kind: 'text', text: `None written down${of}.` }
      : {
          kind: 'list',
          items: lastOnes.map(
            ({ id, on, lot, signs, closed }) =>
              `${id}, ${on}${lot ? `, ${lot}` : ''}: ${signs.slice(0, 80)}${closed ? ' (closed)' : ''}`,
          ),
        };
  const earlier = found.length - lastOnes.length;
  return {
    title: `Reactions${of}`,
    blocks: [list, ...(earlier > 0 ? [{ kind: 'text', text: `And ${earlier} earlier.` } as const] : [])],
    figures: {
      reactions: found.map(({ id, lot, on, closed }) => ({ id, lot: lot ?? null, when: on, closed })),
      count: found.length,
    },
    warnings: [seeDoctor, localRules],
    next: lastOnes.slice(0, 3).map(({ id }) => ({ label: id, say: `show ${id}` })),
    quiet: true,
  };
};

/** Writes a reaction down, follows it up, or shows those written down; contacts only to those who may write. */
export const answerReaction = async (wish: ReactionWish, tools: Tools): Promise<Answer | Trouble> => {
  const bench = benchOf(tools.book.state);
  if (wish.action === 'note' || wish.action === 'follow') return written(wish, tools);
  if (wish.action === 'list') return listed(wish, bench);
  const reaction = bench.reactions.get(wish.id ?? '');
  return reaction ? shown(reaction, tools, `Reaction ${reaction.id}`) : notThere(wish.id ?? '');
};
