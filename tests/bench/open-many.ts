import { join } from 'node:path';
import { openHouse } from '../../bot/house.ts';
import { logTo } from '../../bot/log.ts';

export const groups = Array.from({ length: 1000 }, (_, at) => `guild:${at + 1}`);

const member = { id: 'm1', name: 'a member', roles: [], manages: true };

/** In a process of its own: asks something in every group, says its resident memory. Loads what `npm start` loads. */
export const openMany = async (folder: string): Promise<void> => {
  const log = logTo((line) => process.stderr.write(line), 'error', Date.now);
  const house = await openHouse(join(folder, 'store'), log, 'error');
  for (const group of groups) {
    const text = 'scale Hall balm 3 to 24 tins of 15 ml';
    const reply = await house.pipkin.hear({ text, group, channel: 'hall', member, at: Date.now() });
    if ('error' in reply) throw new Error(reply.error.text);
  }
  process.send?.(process.memoryUsage.rss());
  await house.close();
};
