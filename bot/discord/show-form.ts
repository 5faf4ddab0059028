import {
  type APIModalInteractionResponseCallbackData,
  type APITextInputComponent,
  ComponentType,
  type ModalSubmitInteraction,
  TextInputStyle,
} from 'discord.js';
import type { Filled, FormField, FormSpec } from '../forms/form.ts';
import { formId } from './ids.ts';

// Each field in a row of its own, the older of the two documented ways: every client knows it. The newer one, a label with
// the field in it, has a line of help below the label; here that line stands in the field until something is typed.

const input = (
  { name, label, about, long, required, most }: FormField,
  filled: string | undefined,
): APITextInputComponent => ({
  type: ComponentType.TextInput,
  custom_id: name,
  label,
  style: long ? TextInputStyle.Paragraph : TextInputStyle.Short,
  required: required ?? false,
  max_length: most,
  ...(about ? { placeholder: about } : {}),
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
    type: ComponentType.ActionRow,
    components: [input(field, filled[field.name])],
  })),
});

/** What a form was sent back with, by field. */
export const sentBack = ({ fields }: ModalSubmitInteraction): ReadonlyMap<string, string> =>
  new Map(
    [...fields.fields.values()].flatMap((field) =>
      'value' in field && typeof field.value === 'string' ? [[field.customId, field.value] as const] : [],
    ),
  );
