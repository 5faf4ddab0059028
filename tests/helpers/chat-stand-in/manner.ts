import type { APIInteractionResponse, GatewayInteractionCreateDispatchData } from 'discord-api-types/v10';
import type { Exchange } from './exchange.ts';
import { type Call, nothing, type Result } from './state.ts';

/** How a stand-in, a proxy or a newer platform may differ from what is usual, within what the documentation allows. */
export interface Manner {
  /** Events without anything that nobody needs to answer them. */
  readonly bare?: boolean;
  /** A first answer is confirmed with a body, whether it was asked for or not. */
  readonly confirming?: boolean;
  /** Registered commands can be written and not be read. */
  readonly secretive?: boolean;
}

const unneeded = [
  'app_permissions',
  'attachment_size_limit',
  'authorizing_integration_owners',
  'channel',
  'context',
  'entitlements',
  'guild_locale',
  'locale',
  'message',
  'version',
] as const;

type Fields = Record<string, unknown>;

const without = (fields: Fields, names: readonly string[]): Fields =>
  Object.fromEntries(Object.entries(fields).filter(([name]) => !names.includes(name)));

/** Only who asks, where, and what. */
export const bareInteraction = (
  event: GatewayInteractionCreateDispatchData,
): GatewayInteractionCreateDispatchData => {
  const { member, ...rest } = without({ ...event }, unneeded);
  const who = member
    ? { member: without({ ...(member as Fields) }, ['deaf', 'mute', 'flags', 'joined_at']) }
    : {};
  return { ...rest, ...who } as unknown as GatewayInteractionCreateDispatchData;
};

/** The confirmation of a first answer: nothing, or (where the client asks, or the manner is so) what stands now. */
export const confirmation = (manner: Manner, exchange: Exchange, { body }: Call, result: Result): Result => {
  if (result.status >= 400) return result;
  if (!manner.confirming) return nothing;
  const { type } = body as APIInteractionResponse;
  const interaction = { id: exchange.id, type: 2, response_message_id: `${exchange.id}0` };
  return { status: 200, body: { interaction, resource: { type } } };
};
