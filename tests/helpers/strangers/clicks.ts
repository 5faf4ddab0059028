import { readName } from '../../../bot/discord/context-menu.ts';
import {
  buttonPressed,
  commandFilledIn,
  formSent,
  messageCommand,
  optionPicked,
  type Place,
  typedSoFar,
} from '../chat-stand-in/asked.ts';
import type { Action } from './actions.ts';

/** What a stranger does that the platform tells of as an interaction. */
export type Clicked = Exclude<Action, { readonly kind: 'hear' | 'complete' | 'message' }>;

/** The platform's event for it. */
export const eventOf = (action: Clicked, id: string, token: string, place: Place) => {
  switch (action.kind) {
    case 'command':
      return commandFilledIn(id, token, action.name, action.options, place);
    case 'typing':
      return typedSoFar(id, token, action.name, action, place);
    case 'button':
      return buttonPressed(id, token, action.id, place);
    case 'option':
      return optionPicked(id, token, { value: action.id, menu: 'pick1' }, place);
    case 'form':
      return formSent(id, token, { form: action.id, fields: action.fields }, place);
    default:
      return messageCommand(id, token, { name: readName, text: action.text }, place);
  }
};
