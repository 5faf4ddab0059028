import { open } from 'node:fs/promises';
import { join } from 'node:path';
import { openKeeper } from '../../bot/book/keeper-open.ts';
import { seal } from '../../bot/book/seal.ts';
import { openStore } from '../../bot/book/store.ts';
import { entryAt, inFolder } from './books.ts';
import { alternating, median, timed } from './measure.ts';
import { type Found, ratio, spread } from './report.ts';

const blocks = 20;
const each = 60;

/** Recording one event and waiting until it is on disk, against writing the same bytes to a file and flushing it. */
export const append = (): Promise<Found> =>
  inFolder(async (folder) => {
    const keeper = openKeeper(await openStore(join(folder, 'store')));
    const book = await keeper.open('hall');
    const file = await open(join(folder, 'plain'), 'a');
    const { event } = entryAt('hall', 1, 3);
    const bytes = Buffer.from(seal(entryAt('hall', 1, 3)));
    const write = () =>
      timed(each, async () => {
        await file.write(bytes);
        await file.datasync();
      });
    const record = () => timed(each, () => book.record(event, { who: 'member-1', at: Date.now() }));
    await record();
    await write();
    const { first: written, second: recorded } = await alternating(blocks, write, record);
    await file.close();
    await keeper.close();
    const base = `write + fdatasync of ${bytes.length} bytes`;
    return {
      rows: [
        { measure: base, ...spread(written) },
        {
          measure: 'append, awaited, on disk',
          ...spread(recorded),
          ratio: ratio(median(recorded), median(written)),
          baseline: base,
        },
      ],
    };
  });
