import { DiscordAPIError, RESTJSONErrorCodes } from 'discord.js';

/** Whether `fault` is the platform's refusal with one of these codes. */
const isOneOf =
  (...codes: readonly number[]) =>
  (fault: unknown): boolean =>
    fault instanceof DiscordAPIError && codes.includes(Number(fault.code));

/** A reply needs the right to read older messages. */
export const mayNotReply = isOneOf(RESTJSONErrorCodes.CannotReplyWithoutPermissionToReadMessageHistory);

/**
 * What is replied to is no longer there. The platform posts the answer without a reference, as it is asked to; where it
 * does not, the whole message is refused for that one field.
 */
export const isGone = (fault: unknown): boolean =>
  isOneOf(RESTJSONErrorCodes.UnknownMessage)(fault) ||
  (isOneOf(RESTJSONErrorCodes.InvalidFormBodyOrContentType)(fault) &&
    fault instanceof DiscordAPIError &&
    'errors' in fault.rawError &&
    Object.hasOwn(fault.rawError.errors as object, 'message_reference'));

/** The bot may not write here, or not attach a file. */
export const mayNotWrite = isOneOf(RESTJSONErrorCodes.MissingPermissions, RESTJSONErrorCodes.MissingAccess);

/** The command was not answered in time, or its quarter of an hour is over. */
export const isExpired = isOneOf(
  RESTJSONErrorCodes.UnknownInteraction,
  RESTJSONErrorCodes.UnknownWebhook,
  RESTJSONErrorCodes.InvalidWebhookToken,
);

/** A first answer was sent again after the connection broke: the one before had come through. */
export const isAcknowledged = isOneOf(RESTJSONErrorCodes.InteractionHasAlreadyBeenAcknowledged);
