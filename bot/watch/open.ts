import { noWatch, type Watch } from './watch.ts';

export interface OpenWatch {
  readonly watch: Watch;
  close(): Promise<void>;
}

/**
 * Counts and serves the figures on `port` of this machine; without a port it does neither, and loads nothing.
 * @throws {PortError} when the port cannot be had
 */
export const openWatch = async (port: number | undefined): Promise<OpenWatch> => {
  if (port === undefined) return { watch: noWatch, close: async () => {} };
  const [{ meters }, { serveMeters }] = await Promise.all([import('./meters.ts'), import('./serve.ts')]);
  const watch = meters();
  const server = await serveMeters(watch, port);
  return { watch, close: () => server.close() };
};
