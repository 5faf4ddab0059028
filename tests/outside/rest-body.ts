// What came with a request: JSON, or a form with files and the JSON in "payload_json".

import type { IncomingMessage } from 'node:http';
import { isThing, type Wire } from './check.ts';
import type { Upload } from './messages.ts';

type Body = { readonly body: Wire; readonly uploads: readonly Upload[]; readonly problem?: string };

async function all(request: IncomingMessage): Promise<Buffer> {
  const parts: Buffer[] = [];
  for await (const part of request) parts.push(part as Buffer);
  return Buffer.concat(parts);
}

async function form(bytes: Buffer, type: string): Promise<Body> {
  const fields = await new Response(new Uint8Array(bytes), { headers: { 'content-type': type } }).formData();
  const uploads: Upload[] = [];
  let body: Wire = {};
  for (const [field, value] of fields) {
    if (field === 'payload_json') body = JSON.parse(String(value)) as Wire;
    else if (typeof value === 'string') return { body, uploads, problem: `a text field ${field}` };
    else {
      const data = Buffer.from(await value.arrayBuffer());
      uploads.push({ field, name: value.name, bytes: data.length, data });
    }
  }
  return { body, uploads };
}

export async function readBody(request: IncomingMessage): Promise<Body> {
  const bytes = await all(request);
  const type = String(request.headers['content-type'] ?? '');
  try {
    if (type.startsWith('multipart/form-data')) return await form(bytes, type);
    if (bytes.length === 0) return { body: {}, uploads: [] };
    if (!type.startsWith('application/json')) return { body: {}, uploads: [], problem: `type ${type}` };
    const body: unknown = JSON.parse(bytes.toString('utf8'));
    return { body: isThing(body) ? body : { list: body }, uploads: [] };
  } catch (error) {
    return { body: {}, uploads: [], problem: String(error) };
  }
}
