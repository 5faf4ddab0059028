import { printedMonth } from '../../core/bench/days.ts';
import type { Label } from '../../core/label/label.ts';
import type { Region } from '../../core/settings.ts';
import type { Answer } from '../answer.ts';
import { lackText } from './label-missing.ts';
import { type Printed, sheetFigures } from './label-sheet.ts';
import { cautionLines, dateText, identityOf, type TextInput } from './label-text.ts';

export interface Figured {
  readonly region: Region;
  readonly on: string;
  readonly madeOn: string;
  readonly name: string | undefined;
  readonly label: Label;
  readonly printed: TextInput;
}

/** The label in numbers and names; what is left blank is null. */
export const labelFigures = (
  { region, on, madeOn, name, label, printed }: Figured,
  sheet: Printed,
): Answer['figures'] => {
  const { list, net, durability, lacks } = label;
  const { bestBefore, mark } = durability;
  return {
    region,
    on,
    name: name ?? null,
    function: identityOf(name).en,
    inci: list.entries.map((entry) => entry.name),
    ingredients: list.entries.map((entry) => ({
      name: entry.name,
      percent: entry.percent ?? null,
      group: entry.group,
    })),
    net_g: net?.grams ?? null,
    net_oz: net?.ounces ?? null,
    net_printed: net?.printed ?? null,
    net_required: net?.required ?? true,
    hold_at_least_g: net?.holdG ?? null,
    lot: printed.lot ?? null,
    made_on: madeOn,
    best_before: bestBefore,
    best_before_month: printedMonth(bestBefore),
    best_before_printed: dateText(printed) ?? null,
    period_after_opening_months: mark === 'open-jar' ? printed.openMonths : null,
    allergens: list.allergens.map(({ name: allergen, percent, declare }) => ({
      name: allergen,
      percent,
      declare,
    })),
    allergen_list: list.rule.list,
    warnings: [...cautionLines(printed)],
    maker: printed.maker ?? null,
    contact: printed.contact ?? null,
    missing: lacks.map((lack) => ({ what: lack.code, level: lack.level, text: lackText(lack) })),
    sheet: sheetFigures(sheet.sheet, sheet.asked),
  };
};
