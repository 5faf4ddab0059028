import type { AutocompleteInteraction } from 'discord.js';
import { type Front, within } from './front.ts';
import { askerOfInteraction } from './members.ts';
import { acknowledge } from './send.ts';

/** Platform limits: choices in one list, characters of a choice's name and value. */
const maxChoices = 25;
const maxLength = 100;

const names = async (front: Front, interaction: AutocompleteInteraction): Promise<readonly string[]> => {
  const { name, value } = interaction.options.getFocused(true);
  const kind = front.topics.get(interaction.commandName)?.slash.complete?.[name];
  const asker = askerOfInteraction(interaction, front.clock());
  if (!kind || !asker || !front.gate.admitTyping(asker, front.clock())) return [];
  const found = front.pipkin.complete(asker.group, kind, value.slice(0, maxLength));
  return within(found, front.pace.suggestWithinMs, []);
};

/** Offers names that complete what is being typed. A name too long to be offered whole is left out. */
export const suggest = async (front: Front, interaction: AutocompleteInteraction): Promise<void> => {
  const offered = [...new Set(await names(front, interaction))]
    .filter((name) => name.length > 0 && name.length <= maxLength)
    .slice(0, maxChoices);
  await acknowledge(() => interaction.respond(offered.map((name) => ({ name, value: name }))));
};
