import type { Reading } from '../reading.ts';
import type { Item } from './item.ts';
import { type LinesRead, readLines } from './lines.ts';

/** A name and the lines that follow it: "save recipe NAME: lines", or "save LINES as NAME". */
export interface NamedLines {
  readonly name: string;
  readonly lines: LinesRead;
  readonly hasLines: boolean;
}

const politeTail = /[\s,.!]*\b(?:please|pls|thanks|thank you|thx|cheers|ta)\b[\s.!]*$/i;

/** What leads from a name to the lines: "N, made of", "N consists of", "N as a recipe", "N to the book", "N (". */
const leadsToLines =
  /(?:[\s,;:."'(=!?-]|[\s,]\b(?:(?:which|that|it|this) (?:is|has|contains|takes|consists)|(?:we|i) (?:take|use|need|have|make it)|should now be|shall now be|should be|is now|will be|now has|now is|as follows|as a (?:new )?recipe|(?:to|in|into|for) (?:the|our|my) (?:recipe )?(?:book|recipes|list|collection|notebook)|(?:is |are |being )?(?:made|mixed|composed|blended|built|poured)(?: up)?(?: of| from| out of| with)?|consist(?:s|ing)?(?: of)?|contain(?:s|ing)|comprising|using|that|which|and|has|having|of|from|with))+$/i;
const leadsToName =
  /^(?:[\s"':,(-]|of (?=\p{Lu})|(?:an? )?(?:new )?version of (?:the |our |my )?(?=\S)|(?:here is |here's )?(?:our|my|the|a)? ?(?:new )?recipe (?:for|of|called|named) |(?:the|our|my) (?:recipe )?(?:book|notebook|collection|list)[,:] |(?:we|i) (?:make|made|mix|call) (?=\p{Lu}))+/iu;

/** A name as it is kept: no quotes, no polite tail, single spaces. */
export const cleanName = (raw: string): string =>
  raw.replace(politeTail, '').replace(/\s+/g, ' ').replace(leadsToName, '').replace(leadsToLines, '').trim();

const lead =
  /\b(?:save|saved|store|record|remember|keep|add|create|new|enter|update|edit|change|revise|amend|replace)\b\s*(?:down\s+)?(?:(?:this|that|the|it|a|my|our|new|following|saved)\s+)*(?:recipe\b\s*)?(?:(?:as|called|named|for|under|name)\b\s*)*/i;
/** The verb and the word recipe together say it best: "could you keep this for me? save recipe …". */
const fullLead =
  /\b(?:save|store|record|remember|add|create|new|update|edit|change|revise|amend)\s+(?:(?:this|the|a|my|our|new|following)\s+)*recipe\b\s*(?:(?:as|called|named|for|name)\b\s*)*/i;
const bareLead = /^\s*(?:(?:a|the|my|our|new)\s+)*recipe\b\s*(?:(?:for|called|named|name)\b\s*)*[:=]?\s*/i;

const isLineItem = (item: Item): boolean =>
  'gvd%p'.includes(item.letter) || (item.letter === 'n' && item.value !== undefined);

/** Where the recipe's lines begin when no colon or line break says so: at the first amount. */
const firstAmount = (reading: Reading, from: number): number =>
  reading.items.find((item) => item.from >= from && isLineItem(item))?.from ?? reading.text.length;

const linesFrom = (reading: Reading, from: number, to = reading.text.length): LinesRead =>
  readLines(reading.items.filter((item) => item.from >= from && item.to <= to));

const withColon = (reading: Reading, start: number): NamedLines | undefined => {
  const rest = reading.text.slice(start);
  const mark = /[:\n]|\s[-=]\s/.exec(rest);
  if (!mark) return undefined;
  const name = cleanName(rest.slice(0, mark.index));
  const from = start + mark.index + mark[0].length;
  const lines = linesFrom(reading, from);
  return {
    name,
    lines,
    hasLines: lines.lines.length > 0 || lines.trouble !== undefined,
  };
};

const nameLast = (reading: Reading, start: number): NamedLines | undefined => {
  const tail = /\b(?:as|called|named|under the name)\s+([^\n:]+?)\s*$/i.exec(reading.text);
  if (!tail || tail.index < start) return undefined;
  const lines = linesFrom(reading, start, tail.index);
  if (lines.lines.length === 0 && !lines.trouble) return undefined;
  return { name: cleanName(tail[1] ?? ''), lines, hasLines: true };
};

/** Reads the name and lines of a recipe to be saved. `start` is where the saving words end. */
export const readNamedLines = (reading: Reading): NamedLines | undefined => {
  const match = fullLead.exec(reading.text) ?? lead.exec(reading.text) ?? bareLead.exec(reading.text);
  if (!match) return undefined;
  const start = match.index + match[0].length;
  const last = nameLast(reading, start);
  if (last) return last;
  const marked = withColon(reading, start);
  if (marked && (marked.hasLines || marked.name === '')) return marked;
  const from = firstAmount(reading, start);
  const lines = linesFrom(reading, from);
  const name = cleanName(
    reading.text.slice(start, from).replace(/\s(?:with|of|from|is|as|to|into|=)\s*$/i, ''),
  );
  return {
    name,
    lines,
    hasLines: lines.lines.length > 0 || lines.trouble !== undefined,
  };
};
