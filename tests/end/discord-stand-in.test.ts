import { setTimeout as sleep } from 'node:timers/promises';
import {
  type APITextInputComponent,
  ApplicationCommandType,
  ButtonStyle,
  ComponentType,
  MessageFlags,
  TextInputStyle,
} from 'discord-api-types/v10';
import { describe, expect, it } from 'vitest';
import { commandProblems } from '../helpers/chat-stand-in/command-limits.ts';
import { choiceListProblems, messageProblems } from '../helpers/chat-stand-in/message-limits.ts';
import { modalProblems } from '../helpers/chat-stand-in/modal-limits.ts';
import { echoed, echoTopic, samplePipkin } from '../helpers/chat-stand-in/samples.ts';
import { chatWith } from '../helpers/chat-stand-in/with-bot.ts';

// The end-to-end tests lean on the stand-in noticing what the platform would refuse, so that is tested too.

const sound = { content: 'Good morning', allowed_mentions: { parse: [] } };
const button = (id: string, label = 'Again') => ({
  type: ComponentType.Button as const,
  style: ButtonStyle.Secondary as const,
  custom_id: id,
  label,
});
const row = (...components: ReturnType<typeof button>[]) => ({
  type: ComponentType.ActionRow as const,
  components,
});

const slash = { type: ApplicationCommandType.ChatInput as const, name: 'scale', description: 'Scale it' };
const onMessage = { type: ApplicationCommandType.Message as const, name: 'Read it' };

const options = (count: number) =>
  Array.from({ length: count }, (_, at) => ({ label: `Lot ${at}`, value: `lot ${at}` }));
const select = (list: { readonly label: string; readonly value: string }[], placeholder = 'Show a lot') => ({
  type: ComponentType.StringSelect as const,
  custom_id: 'pick1',
  placeholder,
  options: list,
});
const menu = (...about: Parameters<typeof select>) => ({
  type: ComponentType.ActionRow as const,
  components: [select(...about)],
});
const mixed = {
  type: ComponentType.ActionRow as const,
  components: [select(options(1)), button('a')],
};

const field = (more: Partial<APITextInputComponent> = {}) => ({
  type: ComponentType.TextInput as const,
  custom_id: 'name',
  style: TextInputStyle.Short,
  ...more,
});
const label = (component = field(), more: object = {}) => ({
  type: ComponentType.Label as const,
  label: 'Name',
  component,
  ...more,
});
const inRow = (...components: ReturnType<typeof field>[]) => ({
  type: ComponentType.ActionRow as const,
  components,
});
const form = { custom_id: 'form1:recipe:', title: 'Save a recipe', components: [label()] };

describe('the stand-in', () => {
  it('should find nothing wrong with a sound form, menu and list of commands', () => {
    const list = [label(field({ value: 'Hall balm', max_length: 80 }), { description: 'What it is called' })];
    expect(modalProblems({ ...form, components: list })).toEqual([]);
    const rows = [inRow(field({ label: 'Name', placeholder: 'What it is called' }))];
    expect(modalProblems({ ...form, components: rows })).toEqual([]);
    expect(messageProblems({ ...sound, components: [menu(options(25)), row(button('a'))] }, [])).toEqual([]);
    expect(commandProblems([slash, onMessage, { ...onMessage, name: 'scale' }])).toEqual([]);
    expect(choiceListProblems([{ name: 'K12', value: 'K12' }])).toEqual([]);
  });

  it.each([
    ['a long id', { ...form, custom_id: 'x'.repeat(101) }],
    ['no title', { ...form, title: '' }],
    ['a long title', { ...form, title: 'x'.repeat(46) }],
    ['no fields', { ...form, components: [] }],
    [
      'six fields',
      { ...form, components: ['a', 'b', 'c', 'd', 'e', 'f'].map((id) => label(field({ custom_id: id }))) },
    ],
    ['two fields of one id', { ...form, components: [label(), label()] }],
    ['a long label', { ...form, components: [label(field(), { label: 'x'.repeat(46) })] }],
    ['a long description', { ...form, components: [label(field(), { description: 'x'.repeat(101) })] }],
    ['room for more than 4000', { ...form, components: [label(field({ max_length: 4001 }))] }],
    [
      'more in it than it has room for',
      { ...form, components: [label(field({ max_length: 3, value: 'balm' }))] },
    ],
    ['a long placeholder', { ...form, components: [label(field({ placeholder: 'x'.repeat(101) }))] }],
    ['a label twice', { ...form, components: [label(field({ label: 'Name' }))] }],
    ['a field without a label', { ...form, components: [inRow(field())] }],
    ['a long label in a row', { ...form, components: [inRow(field({ label: 'x'.repeat(46) }))] }],
    [
      'a row of two fields',
      { ...form, components: [inRow(field({ label: 'a' }), field({ label: 'b', custom_id: 'b' }))] },
    ],
    [
      'something that is no field',
      { ...form, components: [{ type: ComponentType.TextDisplay, content: 'a' }] },
    ],
  ])('should refuse a form with %s', (_, body) => {
    expect(modalProblems(body as Parameters<typeof modalProblems>[0])).toHaveLength(1);
  });

  it.each([
    ['a description on a message command', [{ ...onMessage, description: 'Reads it' }]],
    ['a long name of one', [{ ...onMessage, name: 'x'.repeat(33) }]],
    ['six of them', ['a', 'b', 'c', 'd', 'e', 'f'].map((name) => ({ ...onMessage, name }))],
    ['two of one name', [onMessage, onMessage]],
    ['a command of no known type', [{ ...onMessage, type: 9 }]],
    ['more than 100 commands', Array.from({ length: 101 }, (_, at) => ({ ...slash, name: `scale${at}` }))],
    ['a capital in a slash command', [{ ...slash, name: 'Scale' }]],
    ['a slash command without description', [{ ...slash, description: '' }]],
  ])('should refuse %s', (_, list) => {
    expect(commandProblems(list as Parameters<typeof commandProblems>[0])).toHaveLength(1);
  });

  it('should refuse suggestions that are too many, too long or empty', () => {
    const many = Array.from({ length: 26 }, (_, at) => ({ name: `Lot ${at}`, value: `K${at}` }));
    expect(choiceListProblems(many)).toHaveLength(1);
    expect(choiceListProblems([{ name: 'x'.repeat(101), value: 'x' }])).toHaveLength(1);
    expect(choiceListProblems([{ name: '', value: 'x' }])).toHaveLength(1);
  });

  it('should find nothing wrong with a sound message', () => {
    expect(messageProblems({ ...sound, components: [row(button('a'), button('b'))] }, [])).toEqual([]);
  });

  it.each([
    ['2001 characters', { ...sound, content: 'x'.repeat(2001) }],
    ['no words', { ...sound, content: '' }],
    ['no allowed mentions', { content: 'Good morning' }],
    [
      'mentions allowed',
      {
        content: 'Good morning',
        allowed_mentions: { parse: [], replied_user: true },
      },
    ],
    ['mentions not excluded', { content: 'Good morning', allowed_mentions: {} }],
    ['a long button id', { ...sound, components: [row(button('x'.repeat(101)))] }],
    ['a long label', { ...sound, components: [row(button('a', 'x'.repeat(81)))] }],
    ['two buttons of one id', { ...sound, components: [row(button('a'), button('a'))] }],
    [
      'six buttons in a row',
      {
        ...sound,
        components: [row(...['a', 'b', 'c', 'd', 'e', 'f'].map((id) => button(id)))],
      },
    ],
    ['a flag not meant for it', { ...sound, flags: MessageFlags.Crossposted }],
    ['an embed', { ...sound, embeds: [{ title: 'Good morning' }] }],
    ['a menu without options', { ...sound, components: [menu([])] }],
    ['a menu of 26 options', { ...sound, components: [menu(options(26))] }],
    ['two options of one value', { ...sound, components: [menu([...options(2), ...options(1)])] }],
    ['a long option', { ...sound, components: [menu([{ label: 'a', value: 'x'.repeat(101) }])] }],
    ['an option without words', { ...sound, components: [menu([{ label: '', value: 'a' }])] }],
    ['a long placeholder', { ...sound, components: [{ ...menu(options(1), 'x'.repeat(151)) }] }],
    ['a menu beside a button', { ...sound, components: [mixed] }],
    ['six rows', { ...sound, components: ['a', 'b', 'c', 'd', 'e', 'f'].map((id) => row(button(id))) }],
    ['a menu and a button of one id', { ...sound, components: [menu(options(1)), row(button('pick1'))] }],
    [
      'a layout component',
      { ...sound, components: [{ type: ComponentType.TextDisplay as const, content: 'Good morning' }] },
    ],
  ])('should refuse a message with %s', (_, body) => {
    expect(messageProblems(body, [])).toHaveLength(1);
  });

  it('should notice an interaction acknowledged too late', async () => {
    const pipkin = samplePipkin(async (heard) => {
      await sleep(120);
      return echoed(heard);
    });
    const { standIn, log, close } = await chatWith({
      pipkin,
      topics: [echoTopic],
      acknowledgeWithinMs: 50,
    });
    standIn.slashSent('echo', { text: 'late' });
    await sleep(250);
    await close();
    expect(standIn.problems).toContain('interaction acknowledged too late');
    expect(log.faults.map(({ event }) => event)).toEqual(['chat.fault', 'chat.apology-not-sent']);
  });
});
