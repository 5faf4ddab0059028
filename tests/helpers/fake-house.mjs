// A stand-in for the whole bot behind the console front-ends: it answers from the message's own words, so a test can
// tell what was heard. Plain JavaScript, because it runs in a process of its own beside the compiled front-ends.

const answer = (title, more = {}) => ({
  title,
  blocks: [],
  figures: {},
  warnings: [],
  ...more,
});

const special = {
  'file please': () => ({
    files: [
      {
        name: 'label.txt',
        type: 'text/plain',
        bytes: new TextEncoder().encode('INCI'),
      },
    ],
  }),
  'odd numbers': () => ({
    figures: {
      none: Number.NaN,
      all: Number.POSITIVE_INFINITY,
      minus: -0,
      list: [undefined],
    },
  }),
  'escape please': () => ({
    blocks: [{ kind: 'text', text: '\u001b[31mred\u001b]0;title\u0007 \u202Eback' }],
  }),
};

/** Behaves as the store's name says: `broken` does not open, `faulty` had a fault, `noted` tells of its closing. */
export const fakeHouse = async (storeUrl) => {
  if (storeUrl.includes('broken')) throw new Error('The store is damaged; restore it from a copy.');
  return {
    keeper: undefined,
    faults: () => (storeUrl.includes('faulty') ? 1 : 0),
    close: async () => {
      if (storeUrl.includes('noted')) process.stderr.write('store closed\n');
    },
    pipkin: {
      complete: async () => [],
      async hear(heard) {
        if (heard.text === 'gibberish') {
          return {
            topic: null,
            error: {
              code: 'not-understood',
              text: 'I did not understand that.',
            },
          };
        }
        const { text, group, at, region = null, member } = heard;
        const request = {
          text,
          group,
          at,
          region,
          member: member.id,
          manages: member.manages,
        };
        return {
          topic: 'echo',
          request,
          answer: answer(`Heard: ${JSON.stringify(text)}`, special[text]?.()),
        };
      },
    },
  };
};
