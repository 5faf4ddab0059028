import { Buckets, type Limits } from '../limit.ts';
import type { Asker } from './members.ts';

/** Let in, or what to say instead; `tell` is false where that has been said just before. */
export type Admission = 'in' | { readonly sorry: string; readonly tell: boolean };

export interface Gate {
  /** Whether this member's command, button, form or message is answered now. */
  admit(asker: Pick<Asker, 'group' | 'member'>, atMs: number): Admission;
  /** Whether names are suggested to this member now. */
  admitTyping(asker: Pick<Asker, 'group' | 'member'>, atMs: number): boolean;
}

const seconds = (ms: number): string => {
  const count = Math.max(1, Math.ceil(ms / 1000));
  return count === 1 ? '1 second' : `${count} seconds`;
};

const memberSorry = (waitMs: number): string =>
  `That was a lot at once. I will gladly go on in ${seconds(waitMs)}: please ask again then.`;
const groupSorry = (waitMs: number): string =>
  `Everybody is asking at once here. Please ask again in ${seconds(waitMs)}.`;
const busySorry =
  'I have my hands full at the moment, so I did nothing about this. Please ask again in a moment.';

/** @param underWay - how many answers are under way, this one included */
export const gate = (limits: Limits, underWay: () => number): Gate => {
  const members = new Buckets(limits.member);
  const groups = new Buckets(limits.group);
  const typing = new Buckets(limits.typing);
  const told = new Buckets(limits.told);

  const sorryFor = (key: string, group: string, atMs: number): string | undefined => {
    if (underWay() > limits.underWay) return busySorry;
    // A member who asks too much takes nothing from the group's share.
    const own = members.waitMs(key, atMs);
    if (own > 0) return memberSorry(own);
    const all = groups.take(group, atMs);
    if (all > 0) return groupSorry(all);
    members.take(key, atMs);
    return undefined;
  };

  return {
    admit({ group, member }, atMs) {
      const key = `${group} ${member.id}`;
      const sorry = sorryFor(key, group, atMs);
      return sorry === undefined ? 'in' : { sorry, tell: told.take(key, atMs) === 0 };
    },
    admitTyping: ({ group, member }, atMs) => typing.take(`${group} ${member.id}`, atMs) === 0,
  };
};
