import type { Region } from '../core/settings.ts';
import type { Files } from './files/given.ts';
import type { SlashValues } from './forms/form.ts';

/** Who is asking. `manages` is true for those who manage the group (and for the owner of a private book). */
export interface Member {
  readonly id: string;
  readonly name: string;
  readonly roles: readonly string[];
  readonly manages: boolean;
}

/** A command as it was filled in. `text` of the message says the same in words. */
export interface Command {
  readonly topic: string;
  readonly options: SlashValues;
}

/** One message, as every front-end hands it over. `at` is epoch milliseconds. */
export interface Heard {
  readonly text: string;
  readonly group: string;
  readonly channel: string;
  readonly member: Member;
  readonly at: number;
  /** The command that `text` stands for, if it came as one. */
  readonly command?: Command | undefined;
  /** Overrides the group's region for this message (the one-shot command's `--region`). */
  readonly region?: Region;
  /** Files that came with it, and how to get at those it names. */
  readonly files?: Files;
  /** True where others will read the answer too: what is not for everyone is left out of it. */
  readonly openly?: boolean;
}
