import type { IncomingMessage } from 'node:http';

export interface RequestBody {
  readonly body: unknown;
  readonly files: readonly File[];
}

const bytesOf = async (request: IncomingMessage): Promise<Buffer> => {
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks);
};

/** Reads JSON, or a form with the JSON as `payload_json` and files beside it. */
export const readBody = async (request: IncomingMessage): Promise<RequestBody> => {
  const bytes = await bytesOf(request);
  const type = request.headers['content-type'] ?? '';
  if (bytes.length === 0) return { body: undefined, files: [] };
  if (!type.startsWith('multipart/')) return { body: JSON.parse(bytes.toString()), files: [] };
  const form = await new Response(new Uint8Array(bytes), {
    headers: { 'content-type': type },
  }).formData();
  const files = [...form.values()].filter((value) => typeof value !== 'string');
  return { body: JSON.parse(String(form.get('payload_json'))), files };
};
