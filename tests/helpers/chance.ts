import { configureGlobal } from 'fast-check';

// The same random inputs in every run, so that a change is judged by what it changes. `npm run nightly -- chance` looks
// at new ones: CHANCE_SEED picks them.

const usualSeed = 20_261_126;

configureGlobal({ seed: Number(process.env.CHANCE_SEED ?? usualSeed) });
