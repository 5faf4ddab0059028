import type { Warning } from '../answer.ts';

/** Something to do at the bench: short steps, what to mind, where it comes from. */
export interface Advice {
  readonly id: string;
  readonly title: string;
  readonly steps: readonly string[];
  readonly warnings: readonly Warning[];
  readonly source: string;
  /** True for advice on making, which ends with the local rules. */
  readonly makes?: true;
}

const flame: Warning = {
  code: 'flame-and-alcohol',
  text: 'Alcohol vapour lights at room temperature: dry fully, bottle closed and away, before any hob, flame or spark.',
};
const hot: Warning = { code: 'hot-wax', text: 'Hot wax burns and sticks: keep children and pets out.' };

export const advice: readonly Advice[] = [
  {
    id: 'wax-fire',
    title: 'Fire: heat off, lid on, never water',
    steps: [
      'Switch the heat off. Do not carry the pot.',
      'Put the lid or a fire blanket on. Leave it covered for 30 minutes.',
      'Never water: it turns to steam and throws burning wax about.',
      'Not out at once? Get everybody out, shut the door, call the fire service.',
      'Only smoke so far: heat off now, all the same.',
    ],
    warnings: [{ code: 'wax-fire', text: 'Never water on burning wax or oil.' }],
    source: 'Fire-safety practice, from memory.',
  },
  {
    id: 'burn',
    title: 'Burnt by wax: cool water, 20 minutes',
    steps: [
      'Running water, cool, not icy, for 20 minutes. Rings and watch off.',
      'Wax that sticks stays on: do not peel it off the skin.',
      'Cover loosely. No butter, oil, ice or cream.',
      'Doctor for blisters larger than a coin, face or hands, a child, or doubt. Emergency number for anything large.',
    ],
    warnings: [{ code: 'hot-wax', text: 'Health comes first: this is first aid, no medical advice.' }],
    source: 'General first-aid pages, read second-hand; 20 minutes from memory.',
  },
  {
    id: 'alcohol-and-flame',
    title: 'Alcohol first, all dry, then the flame',
    steps: [
      'Not together. Wipe first; open a window.',
      'Wait until nothing is wet and nothing smells of alcohol.',
      'Close the bottle and put it away. Only then switch the hob on or light a burner.',
      'Never spray near a hot plate; no torch over wiped moulds.',
    ],
    warnings: [flame, hot],
    source:
      'University safety page on alcohol (read); flash point of 70 % alcohol about 17 °C (from memory).',
  },
  {
    id: 'disinfect',
    makes: true,
    title: 'Clean, dry, disinfect, dry again',
    steps: [
      'Wipe wax off while warm, with paper. Hot water and washing-up liquid, rinse.',
      'Dry fully: oven at 60 to 80 °C, or overnight in the air.',
      'Wipe with 70 % alcohol (ethanol or isopropanol) and keep it wet for 3 minutes. Stronger works worse.',
      'Let it dry completely, window open, away from flame and hot plate.',
      'New tins: no dust; glass and metal from a warm oven, plastic wiped.',
    ],
    warnings: [flame, { code: 'brings-water', text: 'A drop of water left in a tin is where mould starts.' }],
    source:
      'Infection-control review and university safety page on alcohol (read); oven and drying are common practice, no source.',
  },
  {
    id: 'glass',
    title: 'Hot wax and glass',
    steps: [
      'Warm the jars to 35 to 50 °C before you pour. Never on cold stone or a wet spot.',
      'No scratched or chipped glass. Ordinary glass can break at a jump of about 40 °C.',
      'One broke? Bin everything poured near it; splinters cannot be seen.',
      'Top the water bath up with hot water, not cold.',
    ],
    warnings: [
      { code: 'glass-shock', text: 'Hot glass looks like cold glass: dry cloth or glove, not a wet one.' },
      hot,
    ],
    source: 'General science page on glass (read second-hand); the rest is common practice, no source.',
  },
  {
    id: 'water-bath',
    title: 'The water bath',
    steps: [
      'Look every 10 minutes: never let it boil dry. Water at least as high as the melt.',
      'Jug off the bottom, on a trivet or folded cloth. Thermometer in the melt.',
      'Top up with hot water. No water into the melt: it sinks, turns to steam and throws oil out.',
      'Jug at most two thirds full, handle turned in. Wipe the foot before you pour.',
      'Microwave: it overheats in spots. Short bursts at most, never wax alone, never metal.',
    ],
    warnings: [{ code: 'bath-dry', text: 'A dry bath takes the melt to the heat of the hob: fire.' }, hot],
    source: 'Common practice, no source.',
  },
  {
    id: 'patch-test',
    makes: true,
    title: 'Patch test',
    steps: [
      'A little on the inner forearm, covered, 24 to 48 hours.',
      'Red, itching, bumps: wash off, and do not use it.',
      'Not on broken or sore skin, not during a cold sore.',
      'No reaction is no proof that it is safe for you, or for others.',
    ],
    warnings: [
      {
        code: 'patch-test',
        text: 'Swelling of lips or tongue, or hard breathing: emergency number. A patch test replaces no safety assessment.',
      },
    ],
    source: 'Common practice, no source; from memory.',
  },
  {
    id: 'spoiled',
    title: 'Has it gone off?',
    steps: [
      'Fuzzy or coloured dots, a musty smell: mould. Bin the whole jar, do not scrape.',
      'Smells of crayons, putty or old nuts, tastes sharp, has turned yellow or brown: rancid. Bin it.',
      'Grain or a white bloom: shea, cocoa or wax crystals. A look, not a fault.',
      'Drops on top: oil is fine. A drop that leaves no grease mark on paper is water: bin it.',
      'An infused oil that is cloudy, bubbles or smells of yeast: bin it.',
    ],
    warnings: [{ code: 'spoiled', text: 'When in doubt, bin it, and tell who got a tin of that batch.' }],
    source: 'Common practice, no source.',
  },
  {
    id: 'children',
    makes: true,
    title: 'Scents and small children',
    steps: [
      'Under 3 years: no essential oils in a balm, and none on lips.',
      'Menthol, camphor, eucalyptus: never near the face of a baby or toddler. They can stop its breathing.',
      'Wintergreen (methyl salicylate): not under 6 years.',
      'Honey: not for babies under 12 months.',
      'Older children: as little as you can; name the oil and I look at it.',
    ],
    warnings: [
      { code: 'not-for-children', text: 'Asthma, epilepsy or medicines: ask a doctor or pharmacist first.' },
    ],
    source: 'EU Annex III entry 324 for methyl salicylate (read); the rest from memory.',
  },
  {
    id: 'lids',
    makes: true,
    title: 'Lids on when it is cold',
    steps: [
      'Let the tins cool open, with clean paper over them against dust. Do not move them.',
      'Lids on at room temperature. Under a lid warm balm sweats, and the water feeds mould.',
      'Drops under a lid? Wipe them off with dry paper and let that tin stand open.',
    ],
    warnings: [hot],
    source: 'Common practice, no source.',
  },
  {
    id: 'rags',
    title: 'Oily cloths',
    steps: [
      'A cloth with flax, hemp or walnut oil can heat up and catch fire by itself.',
      'Dry it flat outdoors, or put it under water in a closed metal tin.',
      'Never crumpled in a bin.',
    ],
    warnings: [{ code: 'oily-cloth', text: 'Flax, hemp and walnut oil dry, and warm up while they do.' }],
    source: 'Safety practice, from memory.',
  },
  {
    id: 'hygiene',
    makes: true,
    title: 'Bench hygiene',
    steps: [
      'Hands washed, hair tied, clean apron, gloves for filling. No eating at the bench.',
      'Nobody with a cold sore, stomach upset or open sore on the hands fills lip balm. Pets and children out.',
      'Everything dry: tools, jugs, tins, herbs. Water is what lets mould grow.',
      'Weigh each line once, read it aloud, tick it; write its lot beside it. A second person checks the scents.',
      'Cool uncovered under paper; lids on at room temperature. Keep one sealed tin of each batch.',
      'Clear away labels and leftovers between two batches.',
    ],
    warnings: [flame, hot],
    source: 'After ISO 22716, good manufacturing practice (from memory), sized for a kitchen.',
  },
];

export const adviceOf = (id: string): Advice | undefined => advice.find((each) => each.id === id);
