/** Places where a wording stands. */
export const place =
  '(?:labels?|tins?|lid|jars?|tube|stick|box|packaging|website|web page|page|shop|shop page|listing|leaflet|poster|flyer|card|stall|sign|instagram|bio|post|product|sticker|stickers|balm|salve|banner|advert|ad|menu|tag|wrapper|bag)';
export const onAPlace = `(?:on|in|for|to)\\s+(?:the|my|our|a|its|your|an)?\\s*(?:lip balm\\s+|market\\s+|market stall\\s+|stall\\s+)?${place}`;

const who = '(?:i|we|you|they|it|a maker|(?:the|my|our|a|this)\\s+\\w+(?:\\s+\\w+)?)';

/** Ways to ask whether something may be done with words. */
export const asking = [
  `(?:can|could|may|might|should|must|do|shall)(?:n't| not)?\\s+${who}(?:\\s+(?:please|also|still|legally|just|not|really|even))?`,
  `(?:can't|cannot|mustn't|shouldn't|couldn't|won't|may not)\\s+${who}`,
  "(?:i|we)\\s+(?:can|may|could|should|must|shall)(?:n't| not)?",
  "(?:i|we)\\s+(?:can't|cannot|mustn't|shouldn't|couldn't)",
  "(?:am i|are we|is one|i'm|we're)\\s+(?:not\\s+)?(?:allowed|permitted|able|free)\\s+to",
  `(?:is it|would it be|it's|is that|is this|would that be)\\s+(?:really\\s+)?(?:ok|okay|fine|legal|illegal|allowed|alright|all right|permitted|safe|possible|a problem|wrong|forbidden|misleading|risky|against the (?:rules|law)|better|acceptable)\\s+(?:to|for (?:me|us) to|if\\s+${who})`,
  `(?:get (?:in|into) trouble|problem|trouble|anything wrong|issue)\\s+(?:for|with|if|by)(?:\\s+${who})?`,
  `(?:does|would) it matter if\\s+${who}`,
  `(?:i'd|we'd|i|we|my \\w+|our \\w+|a shop|they|she|he)\\s+(?:would\\s+)?(?:like|love|want|wants|prefer|prefers)\\s+(?:${who}\\s+|me\\s+|us\\s+)?to`,
  '(?:hoping|planning|going|about|thinking|tempted)\\s+(?:to|of|about)',
  `(?:if|when)\\s+${who}(?:\\s+just)?`,
].join('|');

export const saying =
  'say|says|saying|write|writes|writing|claim|claims|claiming|call|calls|calling|put|putting|print|printing|state|advertise|market|sell|describe|promise|mention|hashtag|tag|quote|publish|tell (?:people|customers|buyers|them|everyone|everybody|(?:my|our|the) (?:students|pupils|customers|buyers|guests|visitors|clients|class|friends))|use the (?:words?|phrase|claim|line|slogan|hashtags?)';

/** Things that are made of words: what follows them and a colon is a wording. */
export const sayingNouns =
  'wording|claims?|slogan|tagline|label text|label wording|text|description|caption|review|post|sign|leaflet|website|flyer|listing|hashtags?|reword|rephrase|sounds?|reads?|cosmetic|medicinal|medical|medicine|blurb|sentence|phrase';
