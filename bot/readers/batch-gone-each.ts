import { oncePerReading, type Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { lotsIn } from './lots.ts';

const small = '(\\d{1,3}|an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve)';
const holder = '(?: (?:tins?|jars?|pots?|tubes?|sticks?))?';
const name = "(?:(?:the |my |our )?[\\p{L}][\\p{L}'’.-]*(?: \\p{Lu}[\\p{L}'’.-]*)?)";
const names = `(${name}(?:, ${name}){0,6},? and ${name})`;
const of = '(?: of (?:the )?_+)?';

/** "Gave Anna and Ben 2 tins each", "2 tins each for Anna and Ben", "Anna and Ben got 2 tins each". */
const shapes: readonly { readonly pattern: RegExp; readonly who: number; readonly many: number }[] = [
  {
    pattern: new RegExp(
      `\\b(?:gave|sent|handed|posted|sold|brought)\\s+${names}\\s+${small}${holder}${of}\\s+each\\b${of}`,
      'iu',
    ),
    who: 1,
    many: 2,
  },
  {
    pattern: new RegExp(`\\b${small}${holder}${of} each${of}\\s+(?:for|to|went to)\\s+${names}`, 'iu'),
    who: 2,
    many: 1,
  },
  {
    pattern: new RegExp(`\\b${small}${holder}${of}\\s+(?:for|to|went to)\\s+${names} each\\b`, 'iu'),
    who: 2,
    many: 1,
  },
  {
    pattern: new RegExp(
      `^\\W*${names}\\s+(?:(?:were|was|have|has|each|both|been|all|just) )*(?:got|took|had|bought|received|have|given|handed|sent)\\s+${small}${holder}${of}(?: each)?${of}\\W*$`,
      'iu',
    ),
    who: 1,
    many: 2,
  },
];

const people =
  '(?:pupils?|students?|children|kids|people|participants?|guests?|learners?|makers?|women|men|ladies|girls|boys|friends|members?|helpers?|volunteers?|beginners?|scouts?|guides|brownies|colleagues|teenagers|adults|neighbours|teachers|leaders|nurses|sisters|cousins|nieces|nephews|aunts|grandchildren|visitors|customers|cubs|beavers|mums|dads|parents|residents|patients|campers|staff|players|runners|walkers|singers|ringers|swimmers|gardeners|families|households|growers|knitters|beekeepers|bakers|drivers|carers|cooks|elves)';
const crowdSaid = `(?:(?:the|our|my|all|each of|all of|every one of) ){0,3}(?<many>\\d{1,2}|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve) (?:(?:little|young|new|other|lovely) )?(?<who>${people})(?: (?:in|from|of|at) (?:the|our|my) [\\p{L}-]+)?`;
const eachOne = small.replace('(', '(?<each>');
const home = '(?: (?:home|each|apiece|back|along|with them))*';
/** "The 4 helpers got a tin each", "gave our 8 pupils one tin each", "a tin for each of the 4 helpers". */
const toPeople: readonly RegExp[] = [
  // "Both deckhands got a jar each".
  `\\bboth (?:of )?(?:the |our |my )?(?<who>\\p{L}[\\p{L}-]+(?: \\p{L}[\\p{L}-]+)??) (?:(?:was|were|has|have|had|been|just|also|each) )*(?<verb>got|took|taken|had|received|bought|given|handed) ${eachOne}${holder}${of} each${of}`,
  `\\b(?<verb>gave|given|sent|handed|sold)(?: out| home)? (?:each|every)(?: one)? of (?:the |our |my )?(?<many>\\d{1,2}|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve) (?<who>\\p{L}[\\p{L}-]+(?: \\p{L}[\\p{L}-]+)??) ${eachOne}${holder}${of}${home}${of}`,
  `\\b(?:each|every)(?: one)? of (?:the |our |my )?(?<many>\\d{1,2}|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve) (?!tins?\\b|jars?\\b|pots?\\b|tubes?\\b|sticks?\\b)(?<who>\\p{L}[\\p{L}-]+(?: \\p{L}[\\p{L}-]+)??) (?:(?:was|were|has|have|had|been|just|also) )*(?<verb>got|took|taken|had|received|bought|given|handed) ${eachOne}${holder}${of}${home}${of}`,
  `\\b(?<verb>gave|given|sent|handed|sold)(?: out| home)? ${crowdSaid} ${eachOne}${holder}${of}${home}${of}`,
  `^\\W*(?:(?:today|yesterday|and|also|then|so)\\W+)*${crowdSaid}(?: (?:each|all|have|has|just|also|then|were|was))* (?<verb>got|took|taken|had|received|bought|went home with|given|handed|kept)(?: home)? ${eachOne}${holder}${of}${home}${of}`,
  `\\b(?<verb>gave|given|sent|handed|sold)(?: out)? _+ to ${crowdSaid}(?: [\\p{L}'-]+){0,4},? ${eachOne}${holder} (?:each|apiece)`,
  `\\b(?:everyone|everybody|each|all)\\b[^_\\d]{0,30}?\\b(?<many>\\d{1,2}|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve) (?<who>of (?:us|them)),? (?:each |all )?(?<verb>took|got|had|received) (?:home )?${eachOne}${holder}${of}${home}`,
  `\\b${eachOne}${holder}${of} (?:each )?(?:to|for|went to)(?= each of| .{3,40}\\beach\\b) ${crowdSaid}(?: each)?`,
].map((pattern) => new RegExp(pattern, 'iu'));

const numbers = 'a one two three four five six seven eight nine ten eleven twelve'.split(' ');
const counted = (word: string): number => {
  const at = numbers.indexOf(word.toLowerCase().replace(/^an$/, 'a'));
  return at < 0 ? Number(word) : Math.max(1, at);
};

/** "The three sisters" by their number, where nothing else is made of it. */
const named = (many: string, who: string): string => `${many} ${who.replace(/^of .*/i, 'group')}`.trim();

/** As many as there are people, where each of them got so many. */
const crowdTold = ({ many = '2', who = '', each = '', verb = '' }: Groups, plain: string): string => {
  const one = counted(each);
  const isEach = one === 1 || /\b(?:each|apiece|every one|everyone|everybody)\b/i.test(plain);
  const told = isEach ? counted(many) * one : one;
  return `${/^(?:sold|bought)$/i.test(verb) ? 'sold' : 'gave'} ${told} CODE to the ${named(isEach ? '' : many, who)}`;
};
type Groups = Readonly<Record<string, string | undefined>>;

const forPeople = (plain: string): { readonly said: string; readonly told: string } | undefined => {
  for (const pattern of toPeople) {
    const match = pattern.exec(plain);
    if (match?.groups?.who !== undefined) return { said: match[0], told: crowdTold(match.groups, plain) };
  }
  return undefined;
};

/** "…, so 18 tins to the members": what was told of each, in all. */
const inAllAgain =
  /[,;.]\s*(?:so|that'?s|that is|that makes|which makes|making|in all|altogether)(?: it)? (?:\d{1,3})(?: (?:tins?|jars?|pots?|tubes?|sticks?))?(?: of _+)?(?: (?:(?:went|gone|go) )?(?:to|for) (?<place>(?:the |our |my )?[\p{L}'’-]+(?: [\p{L}'’-]+){0,2})| in all| altogether| in total| gone| together)*\s*(?=[.,;!]|$)/iu;

/** Told in all and of one place: of that place. */
const inPlace = (told: string, plain: string): string => {
  const place = inAllAgain.exec(plain)?.groups?.place;
  return place === undefined ? told : told.replace(/ to [^_]*$/, ` to ${place}`);
};

/** So many containers to each of several people, told one by one; undefined where a message says no such thing. */
export const toEach = oncePerReading((reading): Reading | undefined => {
  const { text } = reading;
  if (!/\b(?:each|both|apiece|home|gave|got|took|received)\b/i.test(text)) return undefined;
  const [code, second] = lotsIn(reading);
  if (second) return undefined;
  const plain = code
    ? text.slice(0, code.from) + '_'.repeat(code.to - code.from) + text.slice(code.to)
    : text;
  const crowd = forPeople(plain);
  if (crowd && code) {
    const rest = plain
      .replace(crowd.said, inPlace(crowd.told, plain))
      .replace(inAllAgain, '')
      .replace(/_+/g, '')
      .replace('CODE', `of ${code.code}`);
    return readAgain(rest, reading);
  }
  return /\b(?:each|both)\b/i.test(text) && !/\beach of\b/i.test(text)
    ? toNames(reading, plain, code?.code)
    : undefined;
});

const toNames = (reading: Reading, plain: string, code: string | undefined): Reading | undefined => {
  for (const { pattern, who, many } of shapes) {
    const match = pattern.exec(plain);
    const all = match?.[who]?.split(/,? and |, /);
    if (!match || !all || all.length < 2) continue;
    const verb = /\b(?:sold|bought)\b/i.test(plain) ? 'sold' : 'gave';
    const parts = all.map(
      (each, at) =>
        `${/^an?$/i.test(match[many] ?? '') ? 1 : match[many]}${at === 0 && code ? ` of ${code}` : ''} to ${each.trim()}`,
    );
    const after = plain.slice(match.index + match[0].length).replace(/_+/g, '');
    const before = plain
      .slice(0, match.index)
      .replace(/\b(?:i|we|so|also|and|then)\b|[_,:;]/gi, '')
      .trim();
    return readAgain(`${before} ${verb} ${parts.join(', ')}${after}`.trim(), reading);
  }
  return undefined;
};
