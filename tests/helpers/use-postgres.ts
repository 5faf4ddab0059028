import { afterAll, beforeAll } from 'vitest';
import { Postgres } from './postgres.ts';

/** One server for the tests of a file. */
export const usePostgres = (): { readonly server: Postgres } => {
  let running: Postgres | undefined;
  beforeAll(async () => {
    running = new Postgres();
    await running.start();
  }, 60_000);
  afterAll(() => running?.remove());
  return {
    get server() {
      if (!running) throw new Error('the server is not started yet');
      return running;
    },
  };
};
