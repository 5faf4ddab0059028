import { describeBenchPhrases } from '../../helpers/bench-phrases.ts';

describeBenchPhrases('phrases about where lots and tins went', new URL('./trace.json', import.meta.url));
