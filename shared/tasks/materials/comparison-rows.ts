/** Portable electric fence beside woven wire and rigid panels, from the grower's own prices and hours. */
import { BLANK, formula, number, text } from '../../block/cells';
import type { BlockStyle } from '../../contract';
import { symbolOf, type UnitSystem } from '../../units/units';
import type { Draft } from '../draft-block';
import { addSettings, type SettingValues } from '../settings';
import {
  COMPARISON_HEADINGS,
  COMPARISON_SETTINGS,
  type ComparisonKey,
  FIXED_HEADINGS,
  KINDS,
  type TypedComparison,
  YEARLY_INPUTS,
} from './comparison-model';
import { type FixedItem, panelItems, wovenItems } from './fixed-items';
import type { ItemRows } from './item-rows';

interface ComparisonOn {
  readonly draft: Draft;
  readonly units: UnitSystem;
  readonly lengths: { readonly portable: string; readonly fixed: string; readonly corners: string };
  readonly items: ItemRows;
  readonly typed: TypedComparison;
}

export function addComparison(on: ComparisonOn, values: SettingValues<ComparisonKey>): void {
  const { draft, units } = on;
  draft.add([text('Compared with fixed fence')], 'heading');
  const set = addSettings(draft, COMPARISON_SETTINGS, values, units);
  draft.add(FIXED_HEADINGS.map(text), 'heading');
  const woven = addFixed('Woven wire', wovenItems(on, set), on, set.pay);
  const panels = addFixed('Rigid panels', panelItems(on, set), on, set.pay);
  addYearly(on, set, [woven, panels]);
}

/** Units of what is bought whole. */
const WHOLE = ['posts', 'panels', 'each', 'ft', 'm'];

interface FixedSums {
  readonly materials: string;
  readonly labour: string;
  readonly unpriced: string;
}

const FIXED_STYLES: readonly BlockStyle[] = ['muted', 'plain', 'input', 'muted', 'input', 'plain', 'muted'];

function addFixed(kind: string, items: readonly FixedItem[], on: ComparisonOn, pay: string): FixedSums {
  const { draft } = on;
  const first = draft.next();
  for (const { item, quantity, unit, note } of items) {
    const row = draft.next();
    const typed = on.typed.fixed.get(`${kind}|${item}`);
    const price = item === 'Hours to build' ? formula(`=${pay}`, '#,##0.00') : (typed?.price ?? BLANK);
    draft.add(
      [
        text(kind),
        text(item),
        typed?.quantity ?? formula(`=${quantity}`, WHOLE.includes(unit) ? '#,##0' : '#,##0.0'),
        text(unit),
        price,
        formula(`=IF(${draft.at(row, 4)}="";"";${draft.at(row, 2)}*${draft.at(row, 4)})`, '#,##0.00'),
        text(note),
      ],
      FIXED_STYLES,
    );
  }
  const labourRow = draft.next() - 1;
  const down = (column: number): string => draft.down(first, labourRow - 1, column);
  return {
    materials: `SUM(${down(5)})`,
    labour: draft.fixed(labourRow, 5),
    unpriced: `SUMPRODUCT((${down(2)}>0)*(${down(4)}=""))`,
  };
}

function addYearly(
  on: ComparisonOn,
  set: Readonly<Record<ComparisonKey, string>>,
  fixed: readonly FixedSums[],
): void {
  const { draft, units, lengths, items } = on;
  draft.add(COMPARISON_HEADINGS.map(text), 'heading');
  /** One row; `body` gives the formula body under each kind. */
  const row = (
    label: string,
    body: (at: number) => string,
    format = '#,##0.00',
    style: BlockStyle = 'plain',
  ): number => {
    const cells = KINDS.map((_, at) => formula(`=${body(at)}`, format));
    return draft.add([text(label), ...cells], style);
  };
  const typed = (input: (typeof YEARLY_INPUTS)[keyof typeof YEARLY_INPUTS]): number => {
    const kept = on.typed.yearly.get(input.label);
    const cells = input.start.map((start, at) => kept?.[at] ?? (start === undefined ? BLANK : number(start)));
    const styles = input.start.map((start): BlockStyle => (start === undefined ? 'plain' : 'input'));
    return draft.add([text(input.label), ...cells, text(input.note)], ['plain', ...styles, 'muted']);
  };
  const cell = (at: number, line: number): string => draft.at(line, at + 1);
  const length = row('Length of fence', (at) => (at === 0 ? lengths.portable : lengths.fixed), '#,##0');
  const unpriced = (at: number): string => (at === 0 ? items.unpriced : (fixed[at - 1]?.unpriced ?? '0'));
  const missing = row('Items without a price', unpriced, '0', 'muted');
  const materials = row('Materials', (at) => (at === 0 ? items.newCost : (fixed[at - 1]?.materials ?? '0')));
  const hours = typed(YEARLY_INPUTS.hours);
  const labour = row('Work to set it up', (at) =>
    at === 0 ? `${cell(0, hours)}*${set.pay}` : (fixed[at - 1]?.labour ?? '0'),
  );
  const first = row(
    'First cost',
    (at) => `IF(${cell(at, missing)}>0;"prices missing";${cell(at, materials)}+${cell(at, labour)})`,
  );
  /** A figure that hangs on the first cost stays blank until that is known. */
  const known = (at: number, body: string): string => `IF(ISNUMBER(${cell(at, first)});${body};"")`;
  const unit = symbolOf('length', units);
  const perLength = (line: number) => (at: number) =>
    known(at, `IF(${cell(at, length)}>0;${cell(at, line)}/${cell(at, length)};0)`);
  row(`First cost for each ${unit}`, perLength(first));
  const life = typed(YEARLY_INPUTS.life);
  const share = typed(YEARLY_INPUTS.upkeep);
  const work = typed(YEARLY_INPUTS.work);
  const loss = row('Loss of value a year', (at) => known(at, `${cell(at, first)}/${cell(at, life)}`));
  const interest = row('Interest a year', (at) => known(at, `${cell(at, first)}/2*${set.interest}/100`));
  const upkeep = row('Upkeep a year', (at) => known(at, `${cell(at, first)}*${cell(at, share)}/100`));
  const workCost = row('Work a year', (at) => `${cell(at, work)}*${set.pay}`);
  const year = row(
    'A year, together',
    (at) => known(at, plusCells(at, [loss, interest, upkeep, workCost], cell)),
    '#,##0.00',
    'heading',
  );
  row(`A year, for each ${unit}`, perLength(year));
}

function plusCells(at: number, lines: readonly number[], cell: (at: number, line: number) => string): string {
  return lines.map((line) => cell(at, line)).join('+');
}
