import { Collection } from 'discord.js';
import { describe, expect, it } from 'vitest';
import { chatClient } from '../../bot/discord/client.ts';
import { lean, usedChannel } from '../../bot/discord/lean.ts';
import { toldOf } from '../helpers/chat-stand-in/crowd.ts';
import { now } from '../helpers/house.ts';

const day = 86_400_000;

describe('what is kept of a server', () => {
  it('should be its roles, and its channels only while it may have to be welcomed', () => {
    const joined = new Date(now).toISOString();
    const fresh = { ...toldOf(3), joined_at: joined };
    const old = { ...toldOf(3), joined_at: joined };
    const arriving = { ...toldOf(3), joined_at: joined };
    lean(fresh, false, now + day / 2);
    lean(old, false, now + 2 * day);
    lean(arriving, true, now + 2 * day);
    expect(arriving.channels).toEqual(fresh.channels);
    expect(fresh.channels).toEqual(toldOf(3).channels);
    expect(old.channels).toEqual([]);
    const kept = toldOf(3).roles.map(({ id, name, permissions, position }) => ({
      id,
      name,
      permissions,
      position,
    }));
    expect(kept.map(({ name }) => name)).toContain('Keepers');
    expect(old.roles).toEqual(kept);
    expect(old.members).toHaveLength(1);
  });
});

describe('the caches of the chat', () => {
  const cacheFor = (name: string) => {
    const manager = { name } as never;
    return chatClient().options.makeCache?.(manager, class {} as never, manager) as Collection<
      string,
      object
    >;
  };

  it('should be one and empty for all that is not kept', () => {
    const bans = cacheFor('GuildBanManager');
    bans.set('1', {});
    expect(bans.size).toBe(0);
    expect(cacheFor('VoiceStateManager')).toBe(bans);
  });

  it('should be of its own for what is kept', () => {
    const members = cacheFor('GuildMemberManager');
    for (let at = 0; at < 20; at += 1) members.set(String(at), {});
    expect(members.size).toBe(10);
    expect(cacheFor('GuildMemberManager').size).toBe(0);
    expect(cacheFor('RoleManager')).not.toBe(cacheFor('RoleManager'));
  });
});

const withChannels = (...ids: readonly string[]) => {
  const client = chatClient();
  const own = new Collection<string, unknown>();
  for (const id of ids) {
    const channel = { id, guild: { channels: { cache: own } } };
    own.set(id, channel);
    client.channels.cache.set(id, channel as never);
  }
  return { client, own, left: () => [...client.channels.cache.keys()] };
};

describe('the channels kept', () => {
  it('should be so many at most, without the one that was used longest ago', () => {
    const { client, own, left } = withChannels('1', '2', '3');
    usedChannel(client, '1', 2);
    expect(left()).toEqual(['3', '1']);
    expect([...own.keys()].toSorted()).toEqual(['1', '3']);
  });

  it('should stay while there is room, and one that is not there be nothing', () => {
    const { client, left } = withChannels('1', '2');
    usedChannel(client, '1', 2);
    usedChannel(client, '9', 1);
    expect(left()).toEqual(['2', '1']);
  });
});
