import { type Judgement, judgeClaim } from '../../core/claim/claim.ts';
import type { ClaimMatch } from '../../core/claim/match.ts';
import { ruleSources } from '../../core/data/rules/sources.ts';
import type { Region } from '../../core/settings.ts';
import type { Answer, Block } from '../answer.ts';
import { echo } from '../readers/ask-back.ts';
import type { Tools } from '../topic.ts';
import type { ClaimWish } from '../topics/claim.ts';
import { localRules } from './warnings.ts';

const verdictTitle: Readonly<Record<Judgement['verdict'], string>> = {
  ok: 'reads as a cosmetic claim',
  reword: 'better reworded',
  medicinal: 'reads as medicinal',
};

/** What a medicinal wording makes of the balm, by region. */
const makesIt: Readonly<Record<Region, string>> = {
  eu: 'In the EU a product presented so is a medicine',
  uk: 'In the UK a product presented so is a medicine',
  us: 'In the US the intended use makes it a drug',
  ca: 'In Canada a therapeutic claim makes it a drug or natural health product',
  au: 'In Australia a therapeutic claim makes it a therapeutic good',
};

const seen: Readonly<Record<ClaimMatch['status'], string>> = {
  read: 'rule read',
  'read-secondary': 'rule read second-hand',
  memory: 'rule from memory',
  practice: 'common practice',
  'none-found': 'no rule found',
};

const reason = ({ words, why, status }: ClaimMatch): string => `"${words.trim()}": ${why} (${seen[status]})`;

/** Most words of a wording that are told with their reason. */
const mostTold = 8;

const whyOf = ({ verdict, matches, unsure, foreign }: Judgement, region: Region): string => {
  if (foreign) return 'I read English wordings only, and this does not look like one';
  if (matches.length === 0)
    return unsure
      ? 'nothing in it that I know as a claim of effect, but little that I know as care, look, feel or scent either'
      : 'it speaks of look, feel, care or scent, not of a disease or of how the body works';
  const said = matches.slice(0, mostTold).map(reason).join('; ');
  return verdict === 'medicinal' ? `${said}. ${makesIt[region]}` : said;
};

const sourcesOf = (matches: readonly ClaimMatch[]): Block[] => {
  const ids = new Set(matches.flatMap(({ source }) => source));
  return ruleSources
    .filter(({ id }) => ids.has(id))
    .map(({ what, seen: how }) => ({ kind: 'source', text: `${what} (${how})` }));
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const insteadText = ({ verdict, sayInstead, foreign }: Judgement): Block[] => {
  if (verdict === 'ok') return [];
  if (foreign) return [{ kind: 'text', text: 'Say it in English, and I look again.' }];
  const text = sayInstead ? `Say instead: "${sayInstead}".` : 'Better leave it out.';
  return [{ kind: 'text', text }];
};

const unsureText = (judged: Judgement): Block[] => {
  const local = judged.matches.some(({ askLocally }) => askLocally);
  const parts = [
    ...(judged.unsure ? ['I am not sure about this one; the verdict is the careful reading.'] : []),
    ...(local ? ['Regions differ and I have not seen yours: ask locally.'] : []),
  ];
  return parts.length > 0 ? [{ kind: 'text', text: parts.join(' ') }] : [];
};

/** Answers how a wording reads, why, and what to say instead. It never says that a claim is lawful. */
export const answerClaim = ({ wording, region: asked }: ClaimWish, tools: Tools): Answer => {
  const region = asked ?? tools.settings.region;
  const judged = judgeClaim(wording, region);
  const why = whyOf(judged, region);
  return {
    title: `"${echo(wording)}" ${verdictTitle[judged.verdict]}`,
    blocks: [
      { kind: 'text', text: `${capital(why)}.` },
      ...insteadText(judged),
      ...unsureText(judged),
      {
        kind: 'assumed',
        text: `Region ${region}; everything said anywhere counts, replies and hashtags too.`,
      },
      ...sourcesOf(judged.matches),
    ],
    figures: {
      verdict: judged.verdict,
      why,
      say_instead: judged.sayInstead ?? (judged.verdict === 'ok' ? null : 'leave out'),
      unsure: judged.unsure,
      region,
      found: judged.matches.map(({ words, verdict, status }) => ({ words: words.trim(), verdict, status })),
    },
    warnings: [localRules],
    next:
      judged.sayInstead && !judged.sayInstead.includes('…')
        ? [{ label: 'Look at that wording', say: `can I say "${judged.sayInstead}"` }]
        : [],
  };
};
