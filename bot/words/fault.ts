import type { Trouble } from '../answer.ts';
import type { NotRecorded } from '../book/trouble.ts';

/** Nothing was recorded, or nobody can say; why, and what to do. */
export const notRecorded = (fault: NotRecorded): Trouble => {
  const what =
    fault.reason === 'uncertain' ? 'I cannot say whether that was recorded' : 'Nothing was recorded';
  const why = {
    'disk-full': 'the disk is full',
    'read-only': 'the book can only be read at the moment',
    failed: 'writing failed',
    uncertain: 'the database went away',
  }[fault.reason];
  return {
    code: 'not-allowed',
    text: `${what}: ${why}. Tell whoever runs me, then say it again, for example "list recipes" to see what stands.`,
  };
};

/** A book that cannot be read. The details are for whoever runs the bot, and are in the log under this id. */
export const storeTrouble = (id: string): Trouble => ({
  code: 'not-allowed',
  text: `This group's book cannot be read at the moment (fault ${id}); nothing was recorded and nothing was changed. Tell whoever runs me.`,
});

/** A fault of the program, under the id that is in the log. */
export const programFault = (id: string): Trouble => ({
  code: 'not-understood',
  text: `Something went wrong on my side (fault ${id}). Try it once more, or another way: "help".`,
});
