import { ComponentType, MessageFlags, type RESTPostAPIChannelMessageJSONBody } from 'discord-api-types/v10';

// The platform's limits as its developer documentation gives them (resources/message, components/reference; from
// memory but for the 2,000 characters, which were read in the documentation's repository), and our own rule that
// nobody is mentioned.

const between = (what: string, length: number, least: number, most: number): string[] =>
  length < least || length > most ? [`${what}: ${length} characters, not ${least} to ${most}`] : [];

type Body = RESTPostAPIChannelMessageJSONBody;

type Row = NonNullable<Body['components']>[number];

const rowProblems = (row: Row): string[] => {
  if (row.type !== ComponentType.ActionRow) return ['something other than a row of buttons'];
  const buttons = row.components.flatMap((button) =>
    button.type === ComponentType.Button && 'custom_id' in button ? [button] : [],
  );
  return [
    ...(row.components.length >= 1 && row.components.length <= 5
      ? []
      : ['a row of none or more than 5 buttons']),
    ...(buttons.length < row.components.length ? ['not a button with an id'] : []),
    ...buttons.flatMap(({ custom_id: id, label = '' }) => [
      ...between('custom_id', id.length, 1, 100),
      ...between('button label', label.length, 1, 80),
    ]),
  ];
};

const buttonProblems = ({ components: rows = [] }: Body): string[] => {
  const ids = rows.flatMap((row) =>
    row.type === ComponentType.ActionRow
      ? row.components.flatMap((button) => ('custom_id' in button ? [button.custom_id] : []))
      : [],
  );
  return [
    ...(rows.length > 5 ? ['more than 5 rows'] : []),
    ...(new Set(ids).size < ids.length ? ['two buttons of one id'] : []),
    ...rows.flatMap(rowProblems),
  ];
};

const mentionProblems = ({ allowed_mentions: allowed }: Body): string[] => {
  if (!allowed) return ['allowed_mentions missing: somebody could be mentioned'];
  const named = [...(allowed.parse ?? []), ...(allowed.users ?? []), ...(allowed.roles ?? [])];
  return allowed.parse === undefined || named.length > 0 || allowed.replied_user === true
    ? ['allowed_mentions lets somebody be mentioned']
    : [];
};

const permittedFlags =
  MessageFlags.Ephemeral | MessageFlags.SuppressEmbeds | MessageFlags.SuppressNotifications;

/** What the platform (or the rule that nobody is mentioned) would refuse in a message; empty when nothing. */
export const messageProblems = (body: Body, files: readonly File[]): string[] => {
  const content = body.content ?? '';
  return [
    ...(typeof content === 'string' ? [] : ['content is not text']),
    ...(content.length > 2000 ? [`content of ${content.length} characters, more than 2000`] : []),
    ...(content === '' && files.length === 0 ? ['empty message'] : []),
    ...(files.length > 10 ? ['more than 10 files'] : []),
    ...files.flatMap((file) =>
      file.size > 10 * 1024 * 1024 ? [`file ${file.name} of more than 10 MiB`] : [],
    ),
    ...((body.flags ?? 0) & ~permittedFlags ? [`flags ${body.flags} not permitted here`] : []),
    ...mentionProblems(body),
    ...buttonProblems(body),
  ];
};
