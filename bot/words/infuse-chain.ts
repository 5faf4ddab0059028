import type { Chain, ChainPart } from '../../core/infuse/chain.ts';
import { stepDecimals } from '../../core/steps.ts';
import type { Answer, Block, Trouble, Warning } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { InfuseWish } from '../topics/infuse.ts';
import { infuseFigures } from './infuse-figures.ts';
import { type Plan, type Steep, steepOf } from './infuse-plan.ts';
import { infuseSteps, infuseWarnings } from './infuse-steps.ts';
import { herbName, infusionTable } from './infuse-table.ts';
import { atStep, plain } from './numbers.ts';
import { answerScale } from './scale.ts';
import { shortName } from './warnings.ts';

const sum = (parts: Chain['parts'], of: (part: ChainPart) => number): number =>
  Number(parts.reduce((all, part) => all + of(part), 0).toFixed(6));

/** The places where grams stay behind, so that what is bought can be followed to the tins. */
const chainFigures = (chain: Chain): Answer['figures'] => {
  const { parts, scaled, netG, allowanceG } = chain;
  return {
    herb_g: sum(parts, ({ infusion }) => infusion.herbG),
    oil_in_g: sum(parts, ({ infusion }) => infusion.oilInG),
    uptake_g: sum(parts, ({ infusion }) => infusion.uptakeG),
    oil_out_g: sum(parts, ({ infusion }) => infusion.oilOutG),
    ...(scaled.containers === undefined ? {} : { containers: scaled.containers }),
    ...(scaled.fillGEach === undefined ? {} : { fill_g_each: scaled.fillGEach }),
    net_g: netG,
    allowance_g: allowanceG,
    infusions: parts.map(({ line, herbs, infusion }) => ({
      oil: line?.ingredient ?? null,
      herbs: herbs.map(({ of }) => of.id),
      herb_g: infusion.herbG,
      oil_in_g: infusion.oilInG,
      uptake_g: infusion.uptakeG,
      oil_out_g: infusion.oilOutG,
    })),
    losses: [
      { where: 'herb and cloth', grams: sum(parts, ({ infusion }) => infusion.uptakeG) },
      { where: 'jug and spoon', grams: allowanceG },
    ],
  };
};

const asideText = (part: ChainPart, steep: Steep, g: (grams: number) => string): string => {
  const { infusion, line } = part;
  const own = steep.uptake.weighings > 0 ? ' (by your own weighings)' : '';
  const ratio = `1:${plain(Number(infusion.ratio.toFixed(1)))}`;
  if (!line)
    return `Set aside ${g(infusion.herbG)} g ${herbName(steep)} and melt ${g(infusion.oilInG)} g of the recipe, ${ratio}. The herb keeps wax and all${own}.`;
  const name = shortName(line.ingredient);
  return `Set aside ${g(infusion.herbG)} g ${herbName(steep)} and ${g(infusion.oilInG)} g ${name}, ${ratio}${own}. To be sure take ${g(infusion.oilInSureG)} g of oil, or top up with plain ${name} after straining.`;
};

const namesAndRest = (text: string): readonly [readonly string[], string] => {
  const [names = '', ...rest] = text.toLowerCase().split(': ');
  return [names.split(', '), rest.join(': ')];
};

/** The weigh-out knows the first herb of an oil only; what was said of all of them says it too. */
const isSaidOf = (own: readonly Warning[], { code, text }: Warning): boolean => {
  const [names, rest] = namesAndRest(text);
  return own.some((other) => {
    const [all, same] = namesAndRest(other.text);
    return other.code === code && same === rest && names.every((name) => all.includes(name));
  });
};

const merged = (own: readonly Warning[], scale: readonly Warning[]): Warning[] => {
  const further = scale.filter((each) => !isSaidOf(own, each));
  const all = [...own, ...further].filter(({ code }) => code !== 'local-rules');
  const rules = own.filter(({ code }) => code === 'local-rules').slice(0, 1);
  return [...new Map(all.map((each) => [`${each.code} ${each.text}`, each])).values(), ...rules];
};

const assumedOf = (chain: Chain): Block[] => {
  const { parts, oilChosen } = chain;
  const [first] = parts;
  return [
    ...(oilChosen && first.line
      ? [`I took ${shortName(first.line.ingredient)}, the largest oil of the recipe, as the one to infuse.`]
      : []),
    ...(parts.some(({ infusion }) => infusion.ratioAssumed)
      ? [`I took 1:${plain(first.infusion.ratio)}, the middle of what is usual (common practice).`]
      : []),
  ].map((text) => ({ kind: 'assumed', text }));
};

/** What has to be weighed: to the tins, or for the melt as much more as the herb drinks. */
const weighOutOf = (chain: Chain, wish: InfuseWish, tools: Tools): Answer | Trouble => {
  const { recipe: _recipe, ...target } = wish.batch ?? {};
  const lines = [...chain.lines];
  if (chain.parts[0].line) return answerScale({ ...target, lines }, tools);
  const { stepG } = target;
  return answerScale(
    { lines, totalG: chain.weighed.totalG, lossPercent: 0, ...(stepG ? { stepG } : {}) },
    tools,
  );
};

/** The melt's own weigh-out tells of a mass; what fills the tins is less by what the herb keeps, so only its table counts. */
const weighOutBlocks = (chain: Chain, weighOut: Answer): readonly Block[] =>
  chain.parts[0].line
    ? withAllHerbs(chain, weighOut.blocks)
    : weighOut.blocks.filter(({ kind }) => kind === 'table');

/** A line of the recipe names one herb; where several are in its oil, they are named above the table. */
const withAllHerbs = (chain: Chain, blocks: readonly Block[]): readonly Block[] =>
  chain.parts.reduce((list, { line, herbs: [first, second] }) => {
    if (!line || !first || !second) return list;
    const oil = shortName(line.ingredient);
    const one = `${shortName(first.of.id)}-infused ${oil}`;
    return list.map((block) =>
      block.kind === 'table'
        ? {
            ...block,
            rows: block.rows.map((row) => row.map((cell) => (cell === one ? `herb-infused ${oil}` : cell))),
          }
        : block,
    );
  }, blocks);

const fillText = ({ scaled, netG, allowanceG }: Chain): string => {
  const { containers, fillGEach } = scaled;
  const each =
    containers === undefined || fillGEach === undefined
      ? ''
      : `, ${plain(fillGEach, 1)} g in each of ${containers}`;
  return `Jug and spoon keep ${plain(allowanceG, 1)} g; ${plain(netG, 1)} g goes into the tins${each}.`;
};

const titleOf = (plan: Plan, chain: Chain, wish: InfuseWish, weighOut: Answer): string => {
  const name = plan.recipeName ?? 'Your recipe';
  const { count, size } = wish.batch ?? {};
  if (chain.parts[0].line) return weighOut.title.replace('Your recipe', name);
  const much =
    count === undefined || !size
      ? `${plain(chain.weighed.totalG, 1)} g`
      : `${count} × ${plain(size.amount, 1)} ${size.unit}`;
  return `${name}: ${much}, herb in the melt`;
};

/** The whole chain: herb and oil to set aside, then the weigh-out, with the losses of both steps. */
export const infuseChain = (plan: Plan, chain: Chain, wish: InfuseWish, tools: Tools): Answer | Trouble => {
  if (!wish.batch)
    return { code: 'missing', text: 'Which recipe, and how many tins? For example "24 tins of 15 ml".' };
  const weighOut = weighOutOf(chain, wish, tools);
  if ('code' in weighOut) return weighOut;
  const { stepG } = chain.scaled;
  const g = (grams: number): string => atStep(grams, stepDecimals(stepG));
  const steeps = chain.parts.map((part) => ({ part, steep: steepOf(part, tools.book.state.yields) }));
  const steps = [...new Set(steeps.flatMap(({ steep }) => infuseSteps(steep, wish)))];
  return {
    title: titleOf(plan, chain, wish, weighOut),
    blocks: [
      ...steeps.flatMap(({ part, steep }) => [
        { kind: 'text', text: asideText(part, steep, g) } as const,
        ...infusionTable(steep, tools, part.line ? undefined : 'melt'),
      ]),
      { kind: 'text', text: fillText(chain) },
      { kind: 'list', items: steps },
      ...weighOutBlocks(chain, weighOut),
      ...assumedOf(chain),
    ],
    figures: { ...weighOut.figures, ...infuseFigures(plan, stepG), ...chainFigures(chain) },
    warnings: merged(
      steeps.flatMap(({ steep }) => infuseWarnings(steep, wish.fresh === true)),
      weighOut.warnings,
    ),
  };
};
