import type { Proposal } from '../../core/design/design.ts';
import type { Block } from '../answer.ts';
import { lineName } from './design-lines.ts';
import { whyOf } from './design-why.ts';
import { both, firmnessLine, forecastAssumed, meltLine, solidsTable } from './forecast.ts';
import { plain } from './numbers.ts';

const linesTable = ({ lines }: Proposal): Block => ({
  kind: 'table',
  columns: [
    { title: 'ingredient', align: 'left' },
    { title: '%', align: 'right' },
  ],
  rows: lines.map((line) => [lineName(line), plain(line.percent, 2)]),
  total: ['total', '100'],
});

const holds = ({ survivesC }: Proposal): string =>
  survivesC === undefined ? 'For cool rooms only.' : `Survives ${both(survivesC)}.`;

/** One proposal in full: its lines, why, and the forecast. */
export const shownBlocks = (proposal: Proposal): readonly Block[] => [
  linesTable(proposal),
  { kind: 'text', text: whyOf(proposal) },
  { kind: 'text', text: `${meltLine(proposal.forecast)} ${holds(proposal)}` },
  { kind: 'text', text: firmnessLine(proposal.forecast) },
  solidsTable(proposal.forecast),
  ...forecastAssumed(proposal.forecast),
  {
    kind: 'text',
    text: 'Go on from here: "heat plan for it", "make 24 tins of 15 ml of it", "save it as Winter balm".',
  },
];
