import { after, before, type Figure, type Span } from './workshop-spans.ts';
import { classCues, peopleWords, workshopCues } from './workshop-words.ts';

/** One thing said about a workshop, and the stretches of the message that say it. */
export interface Said<T> {
  readonly value?: T;
  readonly spans: readonly Span[];
}

export const nothing: Said<never> = { spans: [] };

const containerish =
  /\b(?:tins?|jars?|pots?|sticks?|tubes?|tubs?|bottles?|for|each|with|to|and|of|in|per)\b/i;
const peopleShape = new RegExp(`^[\\s-]*((?:[\\p{L}']+\\s+){0,2}?)(?:${peopleWords})\\b`, 'iu');
const ofUs = /^\s+of (?:us|them|you)\b/i;
const ofThem =
  /^\s+of (?:them|us|whom|these)\b(?:\s+(?:are|is))?\s+(?:children|child|kids?|teens?|adults?)?/i;
const weAre =
  /\b(?:we(?:'re| are|'ll be| will be)|there(?:'s| are| will be|'ll be)|(?:group|party|team|circle|class|workshop|course) of)\s+(?:about\s+|around\s+|only\s+|just\s+|going to be\s+)?$/i;
const included = /\b(?:incl\w{0,7}\.?|including|among them|of whom|counting|with)\s*$/i;
const joined = /(?:\band|\bplus|[&+])\s*$/i;

/** "12 people plus me": whoever leads makes one too. */
const plusMe = /\b(?:plus|and) (?:me|myself)\b(?! to| a\b)/i;

/** "One girl is allergic to nuts": somebody among those who come. */
const isSomebody =
  /^\s+(?:is|are|has|have|had|can't|cannot|who|with)\b[^.;,\n]{0,30}\b(?:allerg\w*|intoleran\w*|nuts?|vegans?|bees?|children|kids|pregnant)\b/i;

interface Group extends Span {
  readonly value: number;
  readonly adds: boolean;
}

/** A number of people: "12 keen makers", "12 of us", "we are 12", "a group of 12". */
const groupAt = (text: string, figure: Figure): Group | undefined => {
  const part = { value: figure.value, from: figure.from };
  if (
    after(text, figure.to, ofThem) &&
    /children|child|kid|teen/i.test(text.slice(figure.to, figure.to + 30))
  ) {
    const found = after(text, figure.to, ofThem);
    return { ...part, to: figure.to + (found?.[0].length ?? 0), adds: false };
  }
  const people = after(text, figure.to, peopleShape);
  if (people && after(text, figure.to + people[0].length, isSomebody)) return undefined;
  if (people && !containerish.test(people[1] ?? '')) {
    const adds = !before(text, figure.from, included) && before(text, figure.from, joined) !== undefined;
    return { ...part, to: figure.to + people[0].length, adds };
  }
  const us = after(text, figure.to, ofUs);
  if (us) return { ...part, to: figure.to + us[0].length, adds: false };
  const unit = after(
    text,
    figure.to,
    /^[\s-]*(?:%|x\b|×|[a-z]*\s*(?:tins?|jars?|pots?|sticks?|ml|g|kg|hot)\b)/i,
  );
  return before(text, figure.from, weAre) && !unit ? { ...part, to: figure.to, adds: false } : undefined;
};

/** "workshop for 12, …": a bare number right after the word. */
const bareAt = (text: string, figure: Figure): boolean => {
  const cue = new RegExp(`\\b(?:${[...workshopCues, ...classCues].join('|')})\\s+(?:for|of|with)\\s+$`, 'i');
  const unit =
    /^[\s-]*(?:%|x\b|×|\d|(?:ml|g|kg|oz|l|c|f|hours?|hrs?|minutes?|tins?|jars?|pots?|sticks?|tubes?|hot)\b)/i;
  return before(text, figure.from, cue) !== undefined && after(text, figure.to, unit) === undefined;
};

/** How many people come, groups that are added up among them. */
export const peopleIn = (text: string, figures: readonly Figure[]): Said<number> => {
  const groups = figures.flatMap((figure) => groupAt(text, figure) ?? []);
  const [first, ...more] = groups;
  if (first) {
    const self = plusMe.test(text) ? 1 : 0;
    const value =
      self + first.value + more.filter(({ adds }) => adds).reduce((sum, group) => sum + group.value, 0);
    return { value, spans: groups };
  }
  const bare = figures.find((figure) => bareAt(text, figure));
  return bare ? { value: bare.value, spans: [bare] } : nothing;
};
