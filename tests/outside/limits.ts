// Messages and answers to interactions, by the platform's published pages "Message", "Receiving and Responding to Interactions"
// and "Uploading Files". Figures without a page here (2,000, 6,000, 1,024 …) are from those pages by memory.

import { Check, isAbsent, isThing, type Wire } from './check.ts';
import { choices, commands } from './limits-commands.ts';
import { everyComponent, kinds, messageComponents, modal } from './limits-components.ts';

export type File = { readonly field: string; readonly name: string; readonly bytes: number };

/** How a message reaches the platform; each way has its own flags and must-haves. */
export type Way = 'create' | 'edit' | 'callback' | 'follow-up';

const newerFlag = 1 << 15;
const flagsOf: { readonly [way in Way]: number } = {
  create: 4 | 4096 | newerFlag,
  edit: 4 | newerFlag,
  callback: 4 | 64 | 4096 | newerFlag,
  'follow-up': 4 | 64 | 4096 | newerFlag,
};

const mebibyte = 1024 * 1024;

function embed(check: Check, at: string, one: Wire): number {
  check.optionalText(`${at}.title`, one.title, 0, 256);
  check.optionalText(`${at}.description`, one.description, 0, 4096);
  check.optionalText(`${at}.url`, one.url, 0, 2048);
  check.optionalWhole(`${at}.color`, one.color, 0, 0xffffff);
  const author = isAbsent(one.author) ? {} : check.thing(`${at}.author`, one.author);
  check.optionalText(`${at}.author.name`, author.name, 1, 256);
  const footer = isAbsent(one.footer) ? {} : check.thing(`${at}.footer`, one.footer);
  check.optionalText(`${at}.footer.text`, footer.text, 1, 2048);
  const fields = check.things(`${at}.fields`, one.fields, 0, 25);
  for (const [index, field] of fields.entries()) {
    check.text(`${at}.fields[${index}].name`, field.name, 1, 256);
    check.text(`${at}.fields[${index}].value`, field.value, 1, 1024);
  }
  const texts = [
    one.title,
    one.description,
    author.name,
    footer.text,
    ...fields.flatMap((f) => [f.name, f.value]),
  ];
  return texts.reduce<number>((sum, text) => sum + (typeof text === 'string' ? text.length : 0), 0);
}

function embeds(check: Check, value: unknown): void {
  const all = check.things('embeds', value, 0, 10);
  const length = all.reduce((sum, one, index) => sum + embed(check, `embeds[${index}]`, one), 0);
  if (length > 6000) check.fail('embeds', `${length} characters in all, allowed are 6000`);
}

function files(check: Check, sent: readonly File[]): void {
  if (sent.length > 10) check.fail('files', `${sent.length} files, allowed are 10`);
  for (const file of sent) {
    check.text(`${file.field}.filename`, file.name, 1, 260);
    if (/[/\\]/.test(file.name)) check.fail(file.field, `a path as a name: ${file.name}`);
    if (file.bytes > 10 * mebibyte) check.fail(file.field, `${file.bytes} bytes, allowed are 10 MiB`);
    if (!/^files\[\d+\]$/.test(file.field)) check.fail(file.field, 'no name for a file field');
  }
}

/** What is said of the files: new ones by the number of their field, kept ones by their long id. */
function attachments(check: Check, value: unknown, sent: readonly File[]): void {
  const all = check.things('attachments', value, 0, 10);
  const fields = new Set(sent.map(({ field }) => field));
  for (const [index, one] of all.entries()) {
    check.optionalText(`attachments[${index}].description`, one.description, 0, 1024);
    const isNew = String(one.id).length < 10;
    if (isNew && !fields.has(`files[${String(one.id)}]`))
      check.fail(`attachments[${index}]`, 'no file came with it');
  }
  check.unique(
    'attachments id',
    all.map((one) => String(one.id)),
  );
}

/** Pictures and files that a message points at have to come with it. */
function pointed(check: Check, body: Wire, sent: readonly File[]): void {
  const names = new Set([
    ...sent.map(({ name }) => name),
    ...(Array.isArray(body.attachments)
      ? (body.attachments as Wire[]).map((one) => String(one.filename))
      : []),
  ]);
  for (const [, name] of JSON.stringify([body.embeds, body.components]).matchAll(
    /"attachment:\/\/([^"]*)"/g,
  )) {
    if (!names.has(String(name))) check.fail('attachment', `${name} is pointed at and did not come`);
  }
}

const texts = (body: Wire): string[] => [
  ...(typeof body.content === 'string' ? [body.content] : []),
  ...(Array.isArray(body.components) ? everyComponent(body.components as Wire[]) : []).flatMap((one) =>
    one.type === kinds.text && typeof one.content === 'string' ? [one.content] : [],
  ),
];

/** Whether anybody would be pinged: without `allowed_mentions` all that is written so is, and whoever is replied to. */
function pings(check: Check, body: Wire): void {
  const written = texts(body).some((text) => /<@[!&]?\d+>|@everyone|@here/.test(text));
  const allowed = body.allowed_mentions;
  if (!isThing(allowed)) {
    if (written || !isAbsent(body.message_reference))
      check.fail('allowed_mentions', 'absent where it would ping');
    return;
  }
  for (const key of ['parse', 'users', 'roles'] as const) {
    const list = check.list(`allowed_mentions.${key}`, allowed[key], 0, 100);
    if (list.length > 0) check.fail(`allowed_mentions.${key}`, 'pings somebody');
  }
  if (allowed.replied_user === true)
    check.fail('allowed_mentions.replied_user', 'pings whoever is replied to');
  if (isAbsent(allowed.parse) && written) check.fail('allowed_mentions.parse', 'absent where it would ping');
}

const hasParts = (value: unknown): boolean => Array.isArray(value) && value.length > 0;

function emptiness(check: Check, body: Wire, sent: readonly File[], way: Way): void {
  if (way === 'edit') return;
  const said = typeof body.content === 'string' && body.content.trim() !== '';
  if (!said && sent.length === 0 && ![body.embeds, body.components].some(hasParts)) {
    check.fail('content', 'an empty message');
  }
}

/** The faults of a message, new or edited. */
export function messageFaults(body: unknown, sent: readonly File[], way: Way, wasNewer = false): string[] {
  const check = new Check();
  const message = check.thing('body', body);
  const flags = Number(message.flags ?? 0);
  const newer = wasNewer || (flags & newerFlag) !== 0;
  if ((flags & ~flagsOf[way]) !== 0) check.fail('flags', `${flags} may not be set here`);
  check.optionalText('content', message.content, 0, 2000);
  embeds(check, message.embeds);
  if (newer && (!isAbsent(message.content) || hasParts(message.embeds))) {
    check.fail('flags', 'content or embeds beside the newer components');
  }
  messageComponents(check, message.components, newer);
  files(check, sent);
  attachments(check, message.attachments, sent);
  pointed(check, message, sent);
  pings(check, message);
  emptiness(check, message, sent, way);
  if (!isAbsent(message.nonce)) check.text('nonce', String(message.nonce), 1, 25);
  if (message.tts === true) check.fail('tts', 'is read aloud to everybody');
  return check.faults;
}

/** What may answer which kind of interaction: 2 a command, 3 a component, 4 autocomplete, 5 a modal. */
export function callbackTypes(interaction: number, fromMessage: boolean): readonly number[] {
  if (interaction === 4) return [8];
  if (interaction === 3) return [4, 5, 6, 7, 9];
  if (interaction === 5) return fromMessage ? [4, 5, 6, 7] : [4, 5];
  return [4, 5, 9];
}

export type Asked = { readonly type: number; readonly fromMessage: boolean; readonly optionType?: number };

/** The faults of the first answer to an interaction. */
export function callbackFaults(body: unknown, sent: readonly File[], asked: Asked): string[] {
  const check = new Check();
  const { type, data } = check.thing('body', body);
  if (!callbackTypes(asked.type, asked.fromMessage).includes(Number(type))) {
    check.fail('type', `${String(type)} does not answer an interaction of type ${asked.type}`);
  }
  if (type === 4 || type === 7) {
    return [...check.faults, ...messageFaults(data, sent, type === 4 ? 'callback' : 'edit')];
  }
  if (type === 5 && isThing(data) && (Number(data.flags ?? 0) & ~64) !== 0) {
    check.fail('data.flags', 'only "for one alone" may be set while it loads');
  }
  if (type === 8) choices(check, 'data.choices', check.thing('data', data).choices, asked.optionType ?? 3);
  if (type === 9) modal(check, data);
  return check.faults;
}

/** The faults of all commands of one scope. */
export function commandFaults(list: unknown): string[] {
  const check = new Check();
  commands(check, list);
  return check.faults;
}
