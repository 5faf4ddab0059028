import { GatewayCloseCodes } from 'discord.js';

const meanings: Readonly<Record<number, string>> = {
  [GatewayCloseCodes.AuthenticationFailed]:
    'it refuses the token: it was changed or withdrawn. Put the valid one into DISCORD_TOKEN',
  [GatewayCloseCodes.InvalidShard]: 'it does not know this share of the groups. Set SHARDS to auto',
  [GatewayCloseCodes.ShardingRequired]:
    'the bot is in more servers than one process may have. Set SHARDS to auto, which needs a PostgreSQL store',
  [GatewayCloseCodes.InvalidAPIVersion]: 'it no longer speaks this version. A newer Pipkin is needed',
  [GatewayCloseCodes.InvalidIntents]: 'it does not know what the bot asks to hear. A newer Pipkin is needed',
  [GatewayCloseCodes.DisallowedIntents]: 'it does not allow what the bot asks to hear',
};

/** Why the platform closed the connection for good, for whoever runs the bot. */
export const shutOutSentence = (code: number): string =>
  `The chat platform has shut the bot out (code ${code}): ${meanings[code] ?? 'its documentation says why'}.`;
