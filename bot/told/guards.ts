import { asksOrPlans, withoutCorrect, withoutEvents } from '../readers/bench-text.ts';

/** A no that says no to nothing that happened. */
const idle =
  /\bas (?:it|they) should(?: be)?\b|\bno (?:grain(?:iness)?|mou?ld|bloom|sweat(?:ing)?|off smell|smell|doubt|problem|worries|rush|hurry|wonder|less than)\b|\bnothing (?:is |was )?left\b|\bnot (?:bad|long ago|to mention)\b|\bnothing (?:special|else|more) (?:to (?:say|tell|report))\b/gi;

/** Who tells of what did not happen, will, may or should, or is only supposed, tells nothing to write down. */
const undone: readonly RegExp[] = [
  /\blast time\b|\b(?:another|the other|some other) (?:group|circle|club|maker)\b/i,
  /\b(?:not|never|no|none|nobody|nothing|neither|nor|without|cannot|hardly|barely|scarcely|unless|instead|except|rather than|other than|but for)\b|n['’]t\b|\b(?:dont|didnt|doesnt|isnt|wasnt|werent|wont|cant|havent|hasnt|couldnt|wouldnt|shouldnt)\b/i,
  /(?:\b|['’])(?:will|ll|shall|should|could|would|can|might|may|must|ought|gonna|gotta)\b|['’]d (?:like|love|better|rather|be|give|sell|pour|throw|keep|buy|open|use)\b|\b(?:going to|about to|due to|supposed to|meant to|ready to|free to|able to|used to|have to|has to|need(?:s|ed)? to|tr(?:y|ies|ied|ying) to|failed to|refused to|promised to|agreed to|hope[sd]? to|let me|let us|let['’]s|lets)\b/i,
  /\b(?:want(?:s|ed|ing)?|wish(?:es|ed)?|hop(?:e|es|ed|ing)|plan(?:s|ned|ning)?|intend\w*|expect\w*|prefer\w*|promis\w+|reserv(?:ed|es|ing) for|order(?:ed|s|ing)?|request\w*|asked|asks|asking|offer(?:ed|s|ing)?|consider\w*|decid\w+|need(?:s|ed|ing)?|tomorrow|tonight|soon|eventually|someday|upcoming|next (?:week|month|year|time|spring|summer|autumn|winter|monday|tuesday|wednesday|thursday|friday|saturday|sunday)|for sale|on offer|to do|todo|remind\w*|warn\w*|alert)\b/i,
  /\b(?:if|whether|suppos\w+|imagin\w+|assum\w+|pretend\w*|what if|say we|in case|as though|as if|until|till|once (?:we|i|they|he|she|it|the)|when(?:ever)? (?:we|i|it|they|he|she|the \w+)? ?(?:is|are|do|does|comes?|gets?|arrives?|have|has|pour|sell|give)|before (?:we|i|they))\b/i,
  /\b(?:maybe|perhaps|probably|possibly|presumably|apparently|allegedly|supposedly|likely|guess\w*|think|thinks|thought|believe\w*|reckon\w*|suspect\w*|fear|unsure|uncertain|doubt\w*|seem\w*|rumou?r\w*|heard|wonder\w*|remember (?:to|that)|no idea|either|or|and\/or|nearly|almost|half of|some of|most of|part of|a few|a couple|several|roughly|approximately|approx|or so|ish)\b/i,
  /\b(?:jok\w+|kidding|dream\w*|dreamt|stor(?:y|ies)|poem|song|novel|film|movie|fairy|once upon|hypothetical\w*|example|e\.g|test message|just testing|recipe for|rule|by law)\b/i,
  /\b(?:correct(?:ion|ed)?|undo|delete\w*|remov\w+|cancel\w*|scrap|mistake\w*|wrong(?:ly)?|oops|wait|rather|not the|meant|i mean|scratch that|instead|change[sd]?|typo|misread|miscount\w*|forget(?! to\b))\b/i,
  /\b(?:every|each) (?:day|week|month|year|time|monday|tuesday|wednesday|thursday|friday|saturday|sunday|pour|batch)\b|\b(?:always|usually|normally|often|sometimes|ever|daily|weekly|monthly|per (?:day|week|month|person))\b/i,
  // "Both grandmas got a jar" is of how many?
  /\b(?:both|each|every) (?!of\b)(?:\w+ ){1,3}(?:got|gets?|took|have|has|had|received|bought)\b/i,
  /\b(?:how|what|which|who|whom|whose|where|why|please (?:tell|show|list|calculate)|show me|tell me|give me|list)\b/i,
];

/** "What a day!" asks nothing. */
const exclaims =
  /\bwhat(?:'s| is| was) (?:still |now )?(?:left|remaining|there)\b|\bwhat an? (?:\w+ ){0,2}\w+ ?!|\bwhat (?:luck|fun|weather|a (?:\w+ )?\w+)\s*[,.!]|(?<=\p{L} )who (?=\p{L}{2,}(?:s|ed)\b)|\b(?:who|which) (?=(?:is|was|were|are|has|had|have|came|lives?|works?|loves?|likes?|runs?|keeps?|made|smells?|looks?)\b)/giu;

/** True for a message that says plainly that something happened or stands so. */
export const tellsPlainly = (text: string): boolean => {
  if (text.includes('?')) return false;
  const plain = withoutCorrect(withoutEvents(text)).replace(idle, ' ').replace(exclaims, ' ');
  return !undone.some((pattern) => pattern.test(plain)) && !asksOrPlans(plain);
};
