import { runChat } from '../../.build/bot/terminal/chat.js';
import { fakeHouse } from './fake-house.mjs';

const { pipkin } = await fakeHouse('data/book');
await runChat({
  input: process.stdin,
  output: process.stdout,
  env: process.env,
  pipkin,
  clock: () => 0,
  filesFolder: process.env.FILES ?? 'data/files',
  ...(process.env.HISTORY ? { historyFile: process.env.HISTORY } : {}),
});
