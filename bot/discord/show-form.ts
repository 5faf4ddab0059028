import {
  type APIModalInteractionResponseCallbackData,
  ComponentType,
  type ModalSubmitInteraction,
  TextInputStyle,
} from 'discord.js';
import type { Filled, FormField, FormSpec } from '../forms/form.ts';
import { formId } from './ids.ts';

const input = ({ name, long, required, most }: FormField, filled: string | undefined) => ({
  type: ComponentType.TextInput as const,
  custom_id: name,
  style: long ? TextInputStyle.Paragraph : TextInputStyle.Short,
  required: required ?? false,
  max_length: most,
  ...(filled ? { value: filled.slice(0, most) } : {}),
});

/** A form as the platform shows it, with what is known filled in. */
export const shownForm = (
  { name, title, fields }: FormSpec,
  filled: Filled,
): APIModalInteractionResponseCallbackData => ({
  custom_id: formId(name),
  title,
  components: fields.map((field) => ({
    type: ComponentType.Label as const,
    label: field.label,
    ...(field.about ? { description: field.about } : {}),
    component: input(field, filled[field.name]),
  })),
});

/** What a form was sent back with, by field. */
export const sentBack = ({ fields }: ModalSubmitInteraction): ReadonlyMap<string, string> =>
  new Map(
    [...fields.fields.values()].flatMap((field) =>
      'value' in field && typeof field.value === 'string' ? [[field.customId, field.value] as const] : [],
    ),
  );
