import { maxNameLength } from '../../core/recipe.ts';
import type { FormSpec } from './form.ts';

const lines = {
  name: 'lines',
  label: 'What is in it',
  about: 'One line each: 20 g beeswax. Grams, percent, parts, spoons or drops.',
  required: true,
  long: true,
  most: 3500,
} as const;

/** A recipe to be saved, its lines as they are written. */
export const recipeForm: FormSpec = {
  name: 'recipe',
  title: 'Save a recipe',
  fields: [
    {
      name: 'name',
      label: 'Name',
      about: 'A name that is there gets a new version',
      required: true,
      most: maxNameLength,
    },
    lines,
  ],
  opens: ({ do: action, name, lines: said }) =>
    action === 'save' && (name === undefined || said === undefined),
  say: ({ name = '', lines: said = '' }) => `save recipe ${name}:\n${said}`,
};

/** A message somebody wrote, read as a recipe: what it holds can be put right before it is used. */
export const readForm: FormSpec = {
  name: 'read',
  title: 'Read this as a recipe',
  fields: [
    { ...lines, about: 'Take out what is not a line of the recipe' },
    {
      name: 'make',
      label: 'Weigh it out for',
      about: 'For example 24 tins of 15 ml, or 500 g. Empty: per 100 g',
      most: 60,
    },
    {
      name: 'name',
      label: 'Or save it as',
      about: 'A name, and it is written in the book',
      most: maxNameLength,
    },
  ],
  say: ({ lines: said = '', make = '100 g no loss', name }) =>
    name === undefined ? `scale\n${said}\nto ${make}` : `save recipe ${name}:\n${said}`,
};
