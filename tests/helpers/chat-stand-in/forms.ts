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

export const formShown = (form: APIModalInteractionResponseCallbackData): ShownForm => ({
  id: form.custom_id,
  title: form.title,
  fields: form.components.flatMap((label) => {
    if (label.type !== ComponentType.Label || label.component.type !== ComponentType.TextInput) return [];
    const { custom_id: name, value = '', required = true, style, max_length: most = 4000 } = label.component;
    return [{ name, label: label.label, value, required, long: style === TextInputStyle.Paragraph, most }];
  }),
});
