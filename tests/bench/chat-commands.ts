import type { Asked } from '../helpers/chat-stand-in/round-trips.ts';
import type { StandIn } from '../helpers/chat-stand-in/stand-in.ts';
import { asked } from './bot-process.ts';

const sizes = [10, 15, 20, 25, 30, 50, 60, 100];
let scaled = 0;

/** A request that was not made before: nothing but the recipe is known from the last one. */
const another = () => {
  scaled += 1;
  const tins = 1 + (Math.floor(scaled / sizes.length) % 4999);
  return { recipe: asked.recipe, tins, size: `${sizes[scaled % sizes.length]} ml` };
};

/** What the bench asks for in the chat. "echo" is what the others are measured against. */
export const commands = {
  echo: { name: 'echo', options: { text: 'as long a text' } },
  ready: { name: 'ready', options: { text: 'the answer made beforehand' } },
  again: { name: 'scale', options: asked },
  scale: { name: 'scale', options: another },
} as const satisfies Readonly<Record<string, Asked>>;

/** Says where the commands are not alike: another number of calls to the platform, another length of text, a wrong answer. */
export const checkedAlike = async (standIn: StandIn): Promise<string[]> => {
  let calls = 0;
  standIn.trouble = () => {
    calls += 1;
    return undefined;
  };
  const said = async ({ name, options }: { name: string; options: Parameters<StandIn['slash']>[1] }) => {
    calls = 0;
    const { text } = await standIn.slash(name, options);
    return { text, calls };
  };
  const echoed = await said(commands.echo);
  const made = await said(commands.again);
  standIn.trouble = () => undefined;
  return [
    ...(made.text.includes('343.8') ? [] : ['the answer is not the gram table']),
    ...(echoed.calls === made.calls ? [] : [`${echoed.calls} calls for the echo, ${made.calls} for /scale`]),
    ...(Math.abs(echoed.text.length - made.text.length) <= 2
      ? []
      : [`${echoed.text.length} characters of echo, ${made.text.length} of /scale`]),
  ];
};
