import type { Interaction, RepliableInteraction } from 'discord.js';
import type { Filled, FormSpec } from '../forms/form.ts';
import { asideReply, type ChatReply, chatReply } from '../render/discord.ts';
import { longestId } from './buttons.ts';
import { guarded } from './faults.ts';
import { type Front, within } from './front.ts';
import { formId } from './ids.ts';
import { type Meaning, meaningOfInteraction } from './meaning.ts';
import { type Asker, askerOfInteraction } from './members.ts';
import { isExpired } from './refusals.ts';
import { acknowledge, deferReply, sendToInteraction, tellLate } from './send.ts';
import { shownForm } from './show-form.ts';
import { suggest } from './suggest.ts';

const noBook = 'I answer in servers and in direct messages to me, not in group conversations.';

/** What a member typed into a form is not lost when it could not be read: it can be put right. */
const toBeCorrected = (reply: ChatReply, form: FormSpec, filled: Filled): ChatReply => {
  const id = formId(form.name, filled);
  const [first, ...more] = reply.messages;
  if (id.length > longestId) return reply;
  return { ...reply, messages: [{ ...first, buttons: [{ label: 'Put it right', id }] }, ...more] };
};

const heard = async (
  front: Front,
  meaning: Exclude<Meaning, { readonly form: FormSpec }>,
  asker: Asker,
): Promise<ChatReply> => {
  if ('sorry' in meaning) return asideReply(meaning.sorry);
  const { words, command, from, after = 0 } = meaning;
  const { group, channel, member, at } = asker;
  const reply = await front.pipkin.hear({ text: words, command, group, channel, member, at });
  const shown = chatReply(reply, { words, after });
  const again = from && 'error' in reply ? toBeCorrected(shown, from.form, from.filled) : shown;
  return front.longIds.fitted(again, group, at);
};

/** An answer that takes long is acknowledged first: an interaction not acknowledged within 3 s is dropped. */
const sendSoon = async (
  front: Front,
  interaction: RepliableInteraction,
  coming: Promise<ChatReply>,
): Promise<void> => {
  const early = await within(coming, front.pace.deferAfterMs, undefined);
  if (early === undefined) await deferReply(interaction);
  await sendToInteraction(interaction, early ?? (await coming));
};

const answer = async (front: Front, interaction: RepliableInteraction): Promise<void> => {
  const asker = askerOfInteraction(interaction, front.clock());
  if (!asker) return sendToInteraction(interaction, asideReply(noBook));
  const admission = front.gate.admit(asker, front.clock());
  if (admission !== 'in') return sendToInteraction(interaction, asideReply(admission.sorry));
  const meaning = await meaningOfInteraction(front, interaction, asker);
  if (!('form' in meaning)) return sendSoon(front, interaction, heard(front, meaning, asker));
  // A form has to be the first thing that is shown, and no form can come out of a form.
  if ('showModal' in interaction)
    await acknowledge(() => interaction.showModal(shownForm(meaning.form, meaning.filled)));
};

/** A command, a button, a menu, a form or a request for suggestions. Never rejects. */
export const onInteraction = async (front: Front, interaction: Interaction): Promise<void> => {
  if (interaction.isAutocomplete()) {
    await guarded(front.log, 'suggestions', () => suggest(front, interaction));
    return;
  }
  if (!interaction.isRepliable()) return;
  await guarded(
    front.log,
    'interaction',
    () => answer(front, interaction),
    (apology, fault) => (isExpired(fault) ? tellLate(interaction) : sendToInteraction(interaction, apology)),
  );
};
