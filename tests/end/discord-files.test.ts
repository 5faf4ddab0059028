import { describe, expect, it } from 'vitest';
import { memoryKeeper } from '../../bot/book/keeper-memory.ts';
import { seedDemo } from '../../bot/demo.ts';
import { pipkin } from '../../bot/handle.ts';
import { topics } from '../../bot/topics.ts';
import { bookFile } from '../../core/exchange/file.ts';
import { botId, hazel, wren } from '../helpers/chat-stand-in/people.ts';
import { samplePipkin } from '../helpers/chat-stand-in/samples.ts';
import { useChat } from '../helpers/chat-stand-in/use-chat.ts';
import { now } from '../helpers/house.ts';

const open = useChat();
const most = 1000;

const demoFile = async (): Promise<Uint8Array> => {
  const book = await memoryKeeper().open('any');
  await seedDemo(book, now);
  return Buffer.from(bookFile(await book.entries(1, book.state.seq)));
};

describe('files attached in the group chat', () => {
  it('should be read from the platform when a topic asks for them', async () => {
    const pipkin = samplePipkin();
    const { standIn } = await open({ pipkin });
    const file = standIn.attach('balm.csv', Buffer.from('beeswax,20 g\n'));
    await standIn.write({ text: `<@${botId}> read this`, as: { attachments: [file] } }).until(1);
    const [given, ...more] = pipkin.heard[0]?.files?.attached ?? [];
    expect([given?.name, more.length, pipkin.heard[0]?.openly]).toEqual(['balm.csv', 0, true]);
    const read = await given?.read(most);
    expect(read?.ok && Buffer.from(read.value).toString()).toBe('beeswax,20 g\n');
    expect(pipkin.heard[0]?.files?.at).toBeUndefined();
  });

  it('should be heard without a word in a direct message, and passed over where they are of another kind', async () => {
    const pipkin = samplePipkin();
    const { standIn } = await open({ pipkin });
    const picture = standIn.attach('tin.png', Buffer.from('x'));
    standIn.write({ text: '', direct: true, as: { attachments: [picture] } });
    const file = standIn.attach('book.json', Buffer.from('{}'));
    await standIn.write({ text: '', direct: true, as: { attachments: [picture, file] } }).until(1);
    expect(pipkin.heard.map(({ text, files }) => [text, files?.attached.map(({ name }) => name)])).toEqual([
      ['', ['book.json']],
    ]);
  });

  it.each([
    ['larger than it says', 2000, { size: 10 }, 'too-big'],
    ['as large as it says', 10, { size: 2000 }, 'too-big'],
    ['elsewhere', 10, { url: 'https://cdn.example.org/attachments/1/book.json' }, 'unreadable'],
    ['on this machine', 10, { url: 'http://localhost:1/book.json' }, 'unreadable'],
    ['of another scheme', 10, { url: 'file:///etc/hostname' }, 'unreadable'],
    ['at no address', 10, { url: 'book.json' }, 'unreadable'],
  ] as const)('should not be read where one is %s', async (_what, length, as, why) => {
    const pipkin = samplePipkin();
    const { standIn } = await open({ pipkin });
    const file = standIn.attach('book.json', Buffer.alloc(length), as);
    await standIn.write({ text: 'import', direct: true, as: { attachments: [file] } }).until(1);
    expect(await pipkin.heard[0]?.files?.attached[0]?.read(most)).toEqual({ ok: false, problem: why });
  });

  it('should take a whole book in, shown first and confirmed by its button', async () => {
    const keeper = memoryKeeper();
    const faults: unknown[] = [];
    const bot = pipkin({ keeper, onFault: (_id, fault) => faults.push(fault) });
    const { standIn } = await open({ pipkin: bot, topics });
    const attached = () =>
      demoFile().then((bytes) => ({ attachments: [standIn.attach('fernlea.json', bytes)] }));
    const refused = await standIn
      .write({ text: `<@${botId}> import`, member: wren, as: await attached() })
      .until(1);
    expect(refused.first.content).toContain('Only those who manage');
    const shown = await standIn.write({ text: '', direct: true, as: await attached() }).until(1);
    expect(shown.first.content).toContain('fernlea.json: 2 entries');
    const [button] = shown.first.buttons;
    await standIn.press(button?.id ?? '', { direct: true });
    const { state } = await keeper.open(`dm:${hazel.id}`);
    expect(Object.values(state.recipes).map(({ name }) => name)).toContain('Fernlea hand balm');
    expect(faults).toEqual([]);
  });
});
