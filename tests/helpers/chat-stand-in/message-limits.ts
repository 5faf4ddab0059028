import { ComponentType, MessageFlags, type RESTPostAPIChannelMessageJSONBody } from 'discord-api-types/v10';

// The platform's limits as its developer documentation gives them (resources/message, components/reference; from
// memory but for the 2,000 characters, which were read in the documentation's repository), and our own rule that
// nobody is mentioned.

const between = (what: string, length: number, least: number, most: number): string[] =>
  length < least || length > most ? [`${what}: ${length} characters, not ${least} to ${most}`] : [];

type Body = RESTPostAPIChannelMessageJSONBody;

type Row = NonNullable<Body['components']>[number];

type Part = Extract<Row, { readonly type: ComponentType.ActionRow }>['components'][number];

const buttonProblems = (part: Extract<Part, { readonly type: ComponentType.Button }>): string[] =>
  'custom_id' in part
    ? [
        ...between('custom_id', part.custom_id.length, 1, 100),
        ...between('button label', ('label' in part ? (part.label ?? '') : '').length, 1, 80),
      ]
    : ['not a button with an id'];

interface MenuOption {
  readonly label: string;
  readonly value: string;
  readonly description?: string;
}

const optionProblems = ({ label, value, description }: MenuOption): string[] => [
  ...between('option label', label.length, 1, 100),
  ...between('option value', value.length, 1, 100),
  ...(description === undefined ? [] : between('option description', description.length, 1, 100)),
];

const menuProblems = (menu: Extract<Part, { readonly type: ComponentType.StringSelect }>): string[] => {
  const { custom_id: id, options, placeholder, min_values: least = 1, max_values: most = 1 } = menu;
  return [
    ...between('custom_id', id.length, 1, 100),
    ...(options.length < 1 || options.length > 25 ? [`menu of ${options.length} options, not 1 to 25`] : []),
    ...(placeholder === undefined ? [] : between('menu placeholder', placeholder.length, 0, 150)),
    ...(new Set(options.map(({ value }) => value)).size < options.length ? ['two options of one value'] : []),
    ...(least < 0 || most < 1 || least > most || most > 25 ? [`menu of ${least} to ${most} values`] : []),
    ...options.flatMap(optionProblems),
  ];
};

const rowProblems = (row: Row): string[] => {
  if (row.type !== ComponentType.ActionRow) return ['something other than a row of buttons or a menu'];
  const menus = row.components.filter(({ type }) => type !== ComponentType.Button);
  return [
    ...(row.components.length >= 1 && row.components.length <= 5
      ? []
      : ['a row of none or more than 5 buttons']),
    ...(menus.length > 0 && row.components.length > 1 ? ['a menu that is not alone in its row'] : []),
    ...row.components.flatMap((part): string[] => {
      if (part.type === ComponentType.Button) return buttonProblems(part);
      return part.type === ComponentType.StringSelect
        ? menuProblems(part)
        : ['neither a button nor a menu of texts'];
    }),
  ];
};

const componentProblems = ({ components: rows = [] }: Body): string[] => {
  const ids = rows.flatMap((row) =>
    row.type === ComponentType.ActionRow
      ? row.components.flatMap((part) => ('custom_id' in part ? [part.custom_id] : []))
      : [],
  );
  return [
    ...(rows.length > 5 ? ['more than 5 rows'] : []),
    ...(new Set(ids).size < ids.length ? ['two components of one id'] : []),
    ...rows.flatMap(rowProblems),
  ];
};

/** What the platform would refuse in a list of suggestions. */
export const choiceListProblems = (
  choices: readonly { readonly name: string; readonly value: string | number }[],
): string[] => [
  ...(choices.length > 25 ? [`${choices.length} suggestions, more than 25`] : []),
  ...choices.flatMap(({ name, value }) => [
    ...between('suggestion name', name.length, 1, 100),
    ...between('suggestion value', String(value).length, 1, 100),
  ]),
];

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
    ...((body.embeds ?? []).length > 0 ? ['embeds: answers are plain text'] : []),
    ...componentProblems(body),
  ];
};
