import { describe, expect, it } from 'vitest';
import { slashCommands } from '../../bot/slash.ts';
import { topics } from '../../bot/topics.ts';
import type { Exchange } from '../helpers/chat-stand-in/exchange.ts';
import { botId, guild, textChannel } from '../helpers/chat-stand-in/people.ts';
import type { StandIn } from '../helpers/chat-stand-in/stand-in.ts';
import { useChat } from '../helpers/chat-stand-in/use-chat.ts';
import { dice } from '../helpers/dice.ts';
import { testHouse } from '../helpers/house.ts';
import { phraseTables } from '../helpers/phrases.ts';
import { type Action, Maker } from '../helpers/strangers/actions.ts';
import { eventOf } from '../helpers/strangers/clicks.ts';
import { type Group, groupsFrom, planted } from '../helpers/strangers/groups.ts';
import { useHouse } from '../helpers/use-house.ts';

// Strangers at random, over the network and the gateway: a smaller run of what tests/bot/security/strangers does without.
// ROUNDS_OVER_NETWORK makes a longer one.

const openChat = useChat();
const rounds = Number(process.env.ROUNDS_OVER_NETWORK ?? 60);
const seed = 77;
const answerWithinMs = 30_000;
const keep = useHouse();

const unlimited = { burst: 1e6, perMinute: 1e6 };
const limits = { member: unlimited, group: unlimited, typing: unlimited };

const arrive = (standIn: StandIn, { guild: id, channel }: { guild: string; channel: string }): void =>
  standIn.raw({
    t: 'GUILD_CREATE',
    d: { ...guild, id, roles: [], channels: [{ ...textChannel, id: channel, guild_id: id }] },
  });

const done = async (standIn: StandIn, group: Group, action: Action): Promise<Exchange | undefined> => {
  const place = group.placeOf(action.person);
  switch (action.kind) {
    case 'complete':
      return undefined;
    case 'hear':
    case 'message': {
      if (action.text.trim() === '') return undefined;
      const text = place.direct ? action.text : `<@${botId}> ${action.text}`;
      return standIn.write({ text, ...place }).until(1, answerWithinMs);
    }
    case 'typing': {
      const typed = standIn.interact(place, ({ id }, token) => eventOf(action, id, token, place));
      await typed.completed(answerWithinMs);
      return typed;
    }
    default:
      return standIn
        .interact(place, ({ id }, token) => eventOf(action, id, token, place))
        .answered(answerWithinMs);
  }
};

const textOf = ({ shown, form, offered }: Exchange): string =>
  JSON.stringify([
    shown.map(({ content, buttons, options, files }) => [content, buttons, options, files]),
    form,
    offered,
  ]);

const settle = async (standIn: StandIn, group: Group): Promise<void> => {
  const [person] = group.people;
  const { server } = group.placeOf(person);
  if (server) arrive(standIn, server);
  let batch = '';
  for (const text of planted(group)) {
    const said = text.replaceAll('{batch}', batch);
    const shown = await done(standIn, group, { kind: 'message', text: said, person, at: Date.now() });
    batch = /\b\d\d-[A-Z]{4,6}\b/.exec(shown?.text ?? '')?.[0] ?? batch;
  }
};

/** Secrets of these groups in what was shown. */
const secretsIn = (groups: readonly Group[], shown: string): readonly string[] =>
  groups.flatMap(({ secrets: { kept } }) => Object.values(kept)).filter((secret) => shown.includes(secret));

const idsIn = ({ shown }: Exchange): readonly string[] =>
  shown.flatMap(({ buttons, options }) => [...buttons, ...options].map(({ id }) => id));

describe('strangers over the network', () => {
  it('should each have one answer, in which nothing is anybody else’s', async () => {
    const house = keep(await testHouse());
    const groups = groupsFrom(seed).filter(({ nosy }) => !nosy);
    const { standIn, log } = await openChat({ pipkin: house.pipkin, topics, limits });
    for (const group of groups) await settle(standIn, group);
    const phrases = phraseTables()
      .filter(({ file }) => file !== 'design.json')
      .flatMap((table) => table.phrases.map(({ say }) => say));
    const ids = new Map<Group, readonly string[]>();
    const stock = { phrases, slips: phrases, commands: slashCommands(topics), ids, files: new Map() };
    const makers = groups.map((group, at) => ({ group, maker: new Maker(group, groups, dice(seed + at)) }));
    const leaks: string[] = [];
    const home = new Set<string>();
    let answered = 0;
    const act = async (group: Group, action: Action): Promise<void> => {
      const exchange = await done(standIn, group, action).catch((fault: unknown) => {
        throw new Error(`${String(fault)}: ${JSON.stringify(action)}`);
      });
      if (!exchange) return;
      answered += 1;
      const direct = standIn.writtenTo(action.person).map(({ content }) => content);
      const shown = `${textOf(exchange)} ${direct.join(' ')}`;
      const others = groups.filter((other) => other !== group);
      leaks.push(...secretsIn(others, shown).map((secret) => `${secret} in ${JSON.stringify(action)}`));
      for (const own of secretsIn([group], shown)) home.add(own);
      ids.set(group, [...(ids.get(group) ?? []), ...idsIn(exchange)].slice(-200));
    };
    for (let round = 0; round < rounds; round += 1)
      await Promise.all(makers.map(({ group, maker }) => act(group, maker.next(stock, Date.now()))));
    expect(leaks).toEqual([]);
    expect(home.size).toBeGreaterThan(groups.length * 5);
    expect(answered).toBeGreaterThan(rounds * 3);
    expect(log.faults).toEqual([]);
  }, 600_000);
});
