import {
  type APIRole,
  ChannelType,
  type GatewayGuildCreateDispatchData,
  OverwriteType,
  PermissionFlagsBits,
} from 'discord-api-types/v10';
import { botUser, guild, memberOf, role, textChannel } from './people.ts';

// Many servers at once, each as a small makers' group might have set up: five roles, two headings, five channels to write in
// and one to talk in, half of them closed to some.

const firstId = 910_000_000_000_000_000n;
const names = ['welcome', 'workbench', 'recipes', 'swaps-and-shopping', 'photographs'];

const idOf = (at: number, more: number): string => String(firstId + BigInt(at) * 1000n + BigInt(more));

/** A server by its number, from 0: where something can be asked. */
export const serverOf = (at: number) => ({ guild: idOf(at, 0), channel: idOf(at, 21) });

const rolesOf = (at: number): APIRole[] => [
  { ...(guild.roles[0] as APIRole), id: idOf(at, 0) },
  ...['Keepers', 'Bench', 'Newcomers', 'Pipkin'].map((name, more) => role(idOf(at, more + 1), name, 0n)),
];

const closedTo = (id: string) => [
  {
    id,
    type: OverwriteType.Role as const,
    allow: '0',
    deny: String(PermissionFlagsBits.SendMessages),
  },
];

const channelsOf = (at: number): GatewayGuildCreateDispatchData['channels'] => {
  const common = { guild_id: idOf(at, 0), permission_overwrites: [] };
  const heading = (more: number, name: string) =>
    ({ ...common, id: idOf(at, more), type: ChannelType.GuildCategory, name, position: more - 10 }) as const;
  return [
    heading(10, 'the hall'),
    heading(11, 'the workshop'),
    ...names.map((name, more) => ({
      ...textChannel,
      ...common,
      id: idOf(at, 20 + more),
      name,
      position: more,
      parent_id: idOf(at, 10 + (more % 2)),
      topic: `What goes into ${name} in the group of hall number ${at}, and what does not.`,
      permission_overwrites: more % 2 === 0 ? closedTo(idOf(at, 0)) : [],
    })),
    {
      ...common,
      id: idOf(at, 30),
      type: ChannelType.GuildVoice,
      name: 'talking while pouring',
      position: 9,
      bitrate: 64_000,
      user_limit: 0,
      rtc_region: null,
      parent_id: idOf(at, 10),
    },
  ] as GatewayGuildCreateDispatchData['channels'];
};

/** What the gateway tells of it. */
export const toldOf = (at: number): GatewayGuildCreateDispatchData => ({
  ...guild,
  id: idOf(at, 0),
  name: `Makers of hall number ${at}`,
  owner_id: idOf(at, 99),
  roles: rolesOf(at),
  channels: channelsOf(at),
  members: [{ user: botUser, ...memberOf({ id: botUser.id, name: 'pipkin', roles: [idOf(at, 4)] }) }],
});
