import { faultFields } from '../log.ts';

/** The chat could not be entered. The message is for the person who starts the bot; it never holds the token. */
export class ChatStartError extends Error {}

/** The platform does not let the bot in, and no new attempt mends that: somebody has to change something. */
export class ShutOutError extends ChatStartError {}

/** How the platform is named in messages. */
export const place = (apiUrl: string | undefined): string =>
  apiUrl ? `the chat platform at ${new URL(apiUrl).origin}` : 'the chat platform';

const refused = /invalid token|Authentication failed|\b401\b/i;

/** What is told when the chat cannot be entered. */
export const startError = (fault: unknown, apiUrl: string | undefined): ChatStartError => {
  const message = fault instanceof Error ? fault.message : '';
  if (refused.test(message)) {
    return new ShutOutError(
      'The chat platform refused the token in DISCORD_TOKEN. Please check that it is whole and still valid.',
    );
  }
  const { name, code = 'no code' } = faultFields(fault, 'info');
  return new ChatStartError(
    `Could not enter ${place(apiUrl)} (${name}, ${code}). Is it reachable from here?`,
  );
};
