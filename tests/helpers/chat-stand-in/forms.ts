import {
  type APIModalInteractionResponseCallbackData,
  ComponentType,
  TextInputStyle,
} from 'discord-api-types/v10';

/** One field of a form, as a person or a test looks at it. */
export interface ShownField {
  readonly name: string;
  readonly label: string;
  readonly value: string;
  readonly required: boolean;
  readonly long: boolean;
  readonly most: number;
}

/** A form the bot showed. */
export interface ShownForm {
  readonly id: string;
  readonly title: string;
  readonly fields: readonly ShownField[];
}

type Part = APIModalInteractionResponseCallbackData['components'][number];

const fieldsOf = (part: Part): ShownField[] => {
  const inputs =
    part.type === ComponentType.ActionRow
      ? part.components
      : part.type === ComponentType.Label && part.component.type === ComponentType.TextInput
        ? [{ ...part.component, label: part.label }]
        : [];
  return inputs.map(
    ({ custom_id: name, label = '', value = '', required = true, style, max_length: most = 4000 }) => ({
      name,
      label,
      value,
      required,
      long: style === TextInputStyle.Paragraph,
      most,
    }),
  );
};

export const formShown = (form: APIModalInteractionResponseCallbackData): ShownForm => ({
  id: form.custom_id,
  title: form.title,
  fields: form.components.flatMap(fieldsOf),
});
