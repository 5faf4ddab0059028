import type { Attachment, Message } from 'discord.js';
import { fail, ok, type Result } from '../../core/result.ts';
import { type Files, type FileTrouble, type GivenFile, isReadable } from '../files/given.ts';

/** Where the platform keeps what its members attach. */
const platformHosts: ReadonlySet<string> = new Set(['cdn.discordapp.com', 'media.discordapp.net']);

const withinMs = 15_000;
const mostAttachments = 10;

/** The address as the platform gave it, if it is the platform's own; nothing else is ever fetched. */
const ownAddress = (address: string, apiUrl: string | undefined): URL | undefined => {
  if (!URL.canParse(address)) return undefined;
  const url = new URL(address);
  if (apiUrl !== undefined && url.origin === new URL(apiUrl).origin) return url;
  return url.protocol === 'https:' && url.port === '' && platformHosts.has(url.hostname) ? url : undefined;
};

const bodyOf = async (response: Response, mostBytes: number): Promise<Result<Uint8Array, FileTrouble>> => {
  const parts: Uint8Array[] = [];
  let length = 0;
  // The length that is announced may be wrong, so what comes is counted.
  for await (const part of response.body ?? []) {
    length += part.byteLength;
    if (length > mostBytes) return fail('too-big');
    parts.push(part);
  }
  return ok(Buffer.concat(parts));
};

const fetched = async (url: URL, mostBytes: number): Promise<Result<Uint8Array, FileTrouble>> => {
  try {
    const response = await fetch(url, { redirect: 'error', signal: AbortSignal.timeout(withinMs) });
    return response.ok ? await bodyOf(response, mostBytes) : fail('not-there');
  } catch {
    return fail('unreadable');
  }
};

const given = ({ name, size, url: address }: Attachment, apiUrl: string | undefined): GivenFile => ({
  name,
  said: name,
  read: async (mostBytes) => {
    if (size > mostBytes) return fail('too-big');
    const url = ownAddress(address, apiUrl);
    return url ? fetched(url, mostBytes) : fail('unreadable');
  },
});

/** The files that came with a message, as far as they are of a kind that is read. */
export const attachedFiles = (message: Message, apiUrl: string | undefined): Files => ({
  attached: [...message.attachments.values()]
    .filter(({ name }) => isReadable(name))
    .slice(0, mostAttachments)
    .map((attachment) => given(attachment, apiUrl)),
});
