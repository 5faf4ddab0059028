import { wordsOf } from './word-list.ts';

export const reactionCues = wordsOf(
  'incident incidents react reacts report reported reaction reactions reacted reacting complaint complaints complained',
);
export const signWords =
  wordsOf(`rash rashes itch itchy itches itching itched hives blister blisters blistered swelling swelled swollen welts burning
  burned stinging stung redness inflamed peeling sore tingle tingles tingled tingling sting stings stung burns numb dizzy wheezing breathing breathe bumps eczema flare pimple pimples acne breakout irritated irritation irritates irritating spots spotty rashy prickly hives' complaint reddened reddening redness blotchy blotches blotch swell itchiness soreness`);
const turnedRed =
  /\b(?:skin|lips?|face|cheeks?|hands?|arms?|mouth|chin|elbows?|knees?|wrists?|neck|tongue|eyes?|eyelids?)\b.{0,30}\b(?:red|sore|swollen|raw|puffy|cracked|inflamed)\b|\b(?:skin|lips?|face|cheeks?|hands?|mouth|eyes?|tongue)\b.{0,12}\bburns?\b|\b(?:red|sore|swollen|puffy|raw|burning) (?:skin|lips?|mouth|tongue|throat|chin|elbows?|knees?|wrists?|legs?|feet|toes?|face|cheeks?|hands?|patch(?:es)?|marks?|eyes?|eyelids?|nose|neck|arms?|ears?|knuckles|fingers)|\b(?:dry|flaky|scaly|itchy|rough) (?:skin|patch(?:es)?|spots?|hands?|lips?)\b/i;

export const signs = new RegExp(`\\b(?:${signWords.join('|')})\\b|${turnedRed.source}`, 'i');
