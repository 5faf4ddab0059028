import {
  type APIModalInteractionResponseCallbackData,
  type APITextInputComponent,
  ComponentType,
} from 'discord-api-types/v10';

// The platform's limits of forms as its developer documentation gives them (components/reference, from memory: title and
// label 45 characters, description 100, one to five components, text 4,000 characters, placeholder 100, id 1-100). A field
// is a text, either alone in a row and with a label of its own, or inside a labelled component.

const between = (what: string, length: number, least: number, most: number): string[] =>
  length < least || length > most ? [`${what}: ${length} characters, not ${least} to ${most}`] : [];

const textProblems = (input: APITextInputComponent): string[] => {
  const { custom_id: id, min_length: least = 0, max_length: most = 4000, value, placeholder } = input;
  const what = `field ${id}`;
  return [
    ...between('field id', id.length, 1, 100),
    ...(least < 0 || most < 1 || most > 4000 || least > most ? [`${what}: length ${least} to ${most}`] : []),
    ...(value === undefined ? [] : between(`${what} value`, value.length, least, most)),
    ...(placeholder === undefined ? [] : between(`${what} placeholder`, placeholder.length, 0, 100)),
  ];
};

type Part = APIModalInteractionResponseCallbackData['components'][number];

type Row = Extract<Part, { readonly type: ComponentType.ActionRow }>;

const rowProblems = ({ components: [input, ...more] }: Row): string[] => {
  if (input === undefined || more.length > 0) return ['a row without exactly one field'];
  return input.type === ComponentType.TextInput
    ? [...between('field label', (input.label ?? '').length, 1, 45), ...textProblems(input)]
    : ['a field that is no text'];
};

const labelledProblems = (part: Extract<Part, { readonly type: ComponentType.Label }>): string[] => {
  if (part.component.type !== ComponentType.TextInput) return ['a field that is no text'];
  return [
    ...between('field label', part.label.length, 1, 45),
    ...(part.description === undefined ? [] : between('field description', part.description.length, 1, 100)),
    ...(part.component.label === undefined ? [] : ['a label inside a labelled field']),
    ...textProblems(part.component),
  ];
};

const partProblems = (part: Part): string[] => {
  if (part.type === ComponentType.ActionRow) return rowProblems(part);
  return part.type === ComponentType.Label ? labelledProblems(part) : ['something other than a field'];
};

const idOf = (part: Part): string[] => {
  if (part.type === ComponentType.ActionRow) return part.components.map(({ custom_id: id }) => id);
  return part.type === ComponentType.Label && 'custom_id' in part.component ? [part.component.custom_id] : [];
};

/** What the platform would refuse in a form; empty when nothing. */
export const modalProblems = ({
  custom_id: id,
  title,
  components,
}: APIModalInteractionResponseCallbackData): string[] => {
  const ids = components.flatMap(idOf);
  return [
    ...between('form id', id.length, 1, 100),
    ...between('form title', title.length, 1, 45),
    ...(components.length < 1 || components.length > 5
      ? [`form of ${components.length} fields, not 1 to 5`]
      : []),
    ...(new Set(ids).size < ids.length ? ['two fields of one id'] : []),
    ...components.flatMap(partProblems),
  ];
};
