import type { BaseInteraction } from 'discord.js';
import { describe, expect, it } from 'vitest';
import { askerOfInteraction } from '../../bot/discord/members.ts';

const now = Date.UTC(2026, 10, 26, 9);
const asked = (id: string, createdTimestamp: number): BaseInteraction =>
  ({
    id,
    createdTimestamp,
    user: { id: '900000000000000202', displayName: 'hazel' },
    member: null,
    guildId: null,
    channelId: null,
    memberPermissions: null,
  }) as unknown as BaseInteraction;

describe('when something was asked', () => {
  it('should be told by its id, and be now where the id was not made from a clock', () => {
    const at = (id: string, createdTimestamp: number) =>
      askerOfInteraction(asked(id, createdTimestamp), now)?.at;
    expect(at('1442800000000000000', now - 60_000)).toBe(now - 60_000);
    // The platform counts from the beginning of 2015, so a small number is a moment in 2015.
    expect(at('7', 1_420_070_400_000)).toBe(now);
    expect(at('seven', Number.NaN)).toBe(now);
  });
});
