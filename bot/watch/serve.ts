import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Meters } from './meters.ts';

const plain = 'text/plain; charset=utf-8';

interface Page {
  readonly status: number;
  readonly body: string;
  readonly type?: string;
}

const ready = (meters: Meters): Page => {
  const why = meters.notReady();
  return why === undefined ? { status: 200, body: 'ready\n' } : { status: 503, body: `${why}\n` };
};

/** Health is that this process answers at all; readiness, that messages reach it. */
const pages: Readonly<Record<string, (meters: Meters) => Page | Promise<Page>>> = {
  '/health': () => ({ status: 200, body: 'alive\n' }),
  '/ready': ready,
  '/metrics': async (meters) => ({ status: 200, body: await meters.text(), type: meters.contentType }),
};

const pageAt = (meters: Meters, { method, url = '/' }: IncomingMessage): Page | Promise<Page> => {
  if (method !== 'GET' && method !== 'HEAD') return { status: 405, body: 'only to be read\n' };
  const [path = ''] = url.split('?', 1);
  const page = Object.hasOwn(pages, path) ? pages[path] : undefined;
  return page?.(meters) ?? { status: 404, body: `try ${Object.keys(pages).join(', ')}\n` };
};

const respond = async (meters: Meters, asked: IncomingMessage, response: ServerResponse): Promise<void> => {
  const { status, body, type = plain } = await pageAt(meters, asked);
  response.writeHead(status, { 'content-type': type, 'cache-control': 'no-store' });
  response.end(asked.method === 'HEAD' ? undefined : body);
};

/** The port could not be had. The message is for the person who starts the bot. */
export class PortError extends Error {}

export interface WatchServer {
  readonly port: number;
  close(): Promise<void>;
}

/**
 * Serves `/health`, `/ready` and `/metrics` to this machine alone. Port 0 takes any free one.
 * @throws {PortError} when the port is taken or not allowed
 */
export const serveMeters = async (meters: Meters, port: number): Promise<WatchServer> => {
  const server = createServer({ requestTimeout: 5000, keepAliveTimeout: 5000 }, (asked, response) => {
    respond(meters, asked, response).catch(() => response.destroy());
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', (fault: NodeJS.ErrnoException) =>
      reject(
        new PortError(`METRICS_PORT ${port} on 127.0.0.1 cannot be used (${fault.code ?? fault.name}).`),
      ),
    );
    server.listen(port, '127.0.0.1', resolve);
  });
  // It never keeps the process from ending.
  server.unref();
  return {
    port: (server.address() as AddressInfo).port,
    close: async () => {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
};
