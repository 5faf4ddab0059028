import { uptakeFor } from '../../core/infuse/uptake.ts';
import { ingredientById, isHerb } from '../../core/ingredients.ts';
import type { Answer, Block, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { InfuseWish } from '../topics/infuse.ts';
import { plain } from './numbers.ts';
import { by } from './recipe-table.ts';
import { localRules, shortName } from './warnings.ts';

const say = 'Say it like "I got 260 g out of 40 g calendula in 320 g sunflower oil".';

const rows = (tools: Tools): readonly (readonly string[])[] => {
  const { yields = {} } = tools.book.state;
  return Object.keys(yields)
    .toSorted()
    .flatMap((id) => {
      const herb = ingredientById(id);
      if (!herb || !isHerb(herb)) return [];
      const { value, weighings } = uptakeFor(herb, yields);
      return [[shortName(id), plain(value, 2), String(weighings)]];
    });
};

/** The group's own figures: what each herb kept. */
export const listYields = (tools: Tools): Answer => {
  const own = rows(tools);
  const block: Block =
    own.length === 0
      ? { kind: 'text', text: `None yet, so I reckon with common practice. ${say}` }
      : {
          kind: 'table',
          columns: [
            { title: 'herb', align: 'left' },
            { title: 'g kept per g', align: 'right' },
            { title: 'weighed', align: 'right' },
          ],
          rows: own,
        };
  return {
    title: 'Your own yields',
    blocks: [block],
    figures: { yields: own.map(([herb = '', kept]) => ({ herb, kept_g_per_g: Number(kept) })) },
    warnings: [],
  };
};

/** Forgets the group's figure of a herb; the events keep what it was. */
export const forgetYield = async ({ herb }: InfuseWish, tools: Tools): Promise<Answer | Trouble> => {
  const { yields = {} } = tools.book.state;
  if (herb === undefined || !Object.hasOwn(yields, herb)) {
    return {
      code: 'not-found',
      text: `You have no own yield${herb === undefined ? '' : ` of ${shortName(herb)}`}. ${say}`,
    };
  }
  const was = uptakeFor(herbRow(herb), yields).value;
  await tools.book.record({ kind: 'yield-removed', herb }, by(tools));
  const { low, high } = uptakeFor(herbRow(herb), tools.book.state.yields);
  return {
    title: `Forgotten: your yields of ${shortName(herb)}`,
    blocks: [
      {
        kind: 'text',
        text: `It was ${plain(was, 2)} g to the gram. I reckon with ${low} to ${high} g again (common practice).`,
      },
    ],
    figures: { removed: herb, was_g_per_g: was },
    warnings: [localRules],
  };
};

const herbRow = (id: string) => {
  const found = ingredientById(id);
  return found && isHerb(found) ? found : undefined;
};
