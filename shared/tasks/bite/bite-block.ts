/** "Will it bite" as a block of cells: the lines with their volts, the wires, the settings, the levels. */

import { answer, BLANK, formula, number, text } from '../../block/cells';
import { composeBlock } from '../../block/compose-block';
import type { ComposedBlock } from '../../block/composed-block';
import { TITLES } from '../../block/own-words';
import type { BlockCell, BlockStyle } from '../../contract';
import { fromInside, symbolOf, type UnitSystem } from '../../units/units';
import { type Draft, draftBlock, type Origin } from '../draft-block';
import { lengthFormat } from '../formula-parts';
import { addLookOut } from '../look-out';
import { addSettings, addUnits } from '../settings';
import { BITE_SETTINGS, type BiteSettings } from './bite-settings';
import { ENOUGH_SO_FAR, illustrations } from './illustrated';
import { VOLT_LEVELS } from './levels';
import { addWires, OHMS, type WireRow, type WireTable } from './wire-rows';
import * as words from './words';

export const BITE_BLOCK = 'SOUNDER_BITE';

export interface PlannedLine {
  readonly name: string;
  readonly meters: number;
  readonly liveWires: number;
  readonly wire: string;
}

export interface BitePlan {
  readonly lines: readonly PlannedLine[];
  readonly wires: readonly WireRow[];
  readonly units: UnitSystem;
  readonly settings: BiteSettings;
}

export const LEVELS_TITLE = 'Levels that are named';

export const LINE_HEADINGS = [
  'Line',
  'Wire of the line',
  'Length',
  'Live wires',
  'Clean',
  'In weeds',
  'Pig, clean',
  'Pig, in weeds',
  'Will it bite',
  'Ohms of it',
  'Length ÷ 1000',
] as const;

/** Columns, from 0. The last two are arithmetic: hidden on a tab of ours, and nothing is typed under them. */
const AT = { clean: 4, says: 8, ohms: 9, thousands: 10 } as const;

/** Digits that survive the way to metres and back. */
const SAFE_DIGITS = 12;
const VOLTS = '#,##0';
/** Rows left free for further lines. */
const FREE_LINES = 3;
const WIDTHS = [260, 220, 160, 90, 110, 110, 110, 110, 280, 110, 110];

export function biteBlock(plan: BitePlan, origin: Origin): ComposedBlock {
  const top = draftBlock(origin);
  top.add([text(TITLES.bite)], 'title');
  top.add([text(words.HEAD_CAUTION)], 'warning');
  const below = draftBlock({ row: top.next() + plan.lines.length + FREE_LINES + 4, column: origin.column });
  addLookOut(below, words.BITE_CAUTIONS);
  below.add([text('Settings')], 'heading');
  addUnits(below, plan.units);
  const set = addSettings(below, BITE_SETTINGS, plan.settings, plan.units);
  below.add();
  const wires = addWires(below, plan);
  below.add();
  addLevels(below);
  addLines(top, plan, set, wires);
  top.add();
  const { cells, styles, ids } = composeBlock([...top.rows, ...below.rows]);
  return { cells, styles, ids, rules: top.rules, widths: cells[0]?.map((_, c) => WIDTHS[c] ?? 100) ?? [] };
}

const LINE_STYLES: readonly BlockStyle[] = [
  'input',
  'input',
  'input',
  'input',
  ...Array<BlockStyle>(5).fill('plain'),
  'working',
  'working',
];

function addLines(
  draft: Draft,
  plan: BitePlan,
  set: Readonly<Record<keyof BiteSettings, string>>,
  wires: WireTable,
): void {
  const unit = symbolOf('length', plan.units);
  const per = symbolOf('ohmsPerLength', plan.units);
  draft.add(
    ['', '', unit, '', 'volts', 'volts', 'volts', 'volts', '', per].map((word) => text(word)),
    'muted',
  );
  draft.add(LINE_HEADINGS.map(text), 'heading');
  // The cell functions stand in a blank row above the first line and spill: sorting the lines leaves them alone.
  const anchor = draft.next();
  const count = plan.lines.length + FREE_LINES;
  const column = (at: number): string => draft.down(anchor, anchor + count, at);
  const volts = (leak: string, touch: string): string =>
    `=FENCE_VOLTAGE(${set.volts};${set.ohms};${column(AT.thousands)};${column(AT.ohms)};${leak};${touch})`;
  const columns = [volts('', ''), volts(set.weeds, ''), volts('', set.pig), volts(set.weeds, set.pig)];
  draft.add([...Array<BlockCell>(AT.clean).fill(BLANK), ...columns.map((body) => formula(body, VOLTS))]);
  const first = draft.next();
  for (let at = 0; at < count; at++) {
    const row = first + at;
    const line = plan.lines[at];
    draft.add(
      [
        ...(line ? lineCells(line, plan.units) : [BLANK, BLANK, BLANK, BLANK]),
        ...columns.map(() => answer(VOLTS)),
        formula(judgeFormula(draft, row, set, plan.units)),
        formula(ohmsFormula(draft, row, wires), OHMS),
        formula(`=IF(${draft.at(row, 2)}="";"";${draft.at(row, 2)}/1000)`, '0.000'),
      ],
      LINE_STYLES,
    );
  }
  const warned = draft.at(first, AT.says);
  draft.rules.push({
    row: first - draft.origin.row,
    column: AT.says,
    rows: count,
    columns: 1,
    formula: `=LEFT(${warned};10)="not enough"`,
    background: '#fde3c8',
  });
}

function lineCells(line: PlannedLine, units: UnitSystem): BlockCell[] {
  return [
    text(line.name),
    text(line.wire),
    number(Number(fromInside(line.meters, 'length', units).toPrecision(SAFE_DIGITS)), lengthFormat(units)),
    number(line.liveWires),
  ];
}

function ohmsFormula(draft: Draft, row: number, { names, ohms }: WireTable): string {
  const [wire, live] = [draft.at(row, 1), draft.at(row, 3)];
  return `=IF(${wire}="";"";INDEX(${ohms};MATCH(${wire};${names};0))/IF(${live}="";1;${live}))`;
}

function judgeFormula(
  draft: Draft,
  row: number,
  set: Readonly<Record<keyof BiteSettings, string>>,
  units: UnitSystem,
): string {
  const illustrated = illustrations(units).map(({ spec, start }) => `${set[spec.key]}=${start}`);
  const enough = `IF(OR(${illustrated.join(';')});"${ENOUGH_SO_FAR}";"enough")`;
  const [clean, weeds, pig, both] = [0, 1, 2, 3].map((at) => draft.at(row, AT.clean + at));
  const known = `COUNT(${clean};${weeds};${pig};${both})=4`;
  return `=IF(${draft.at(row, 2)}="";"";IF(NOT(${known});"not worked out";IF(${clean}<${set.onFence};"not enough even clean";IF(${weeds}<${set.onFence};"not enough in weeds";IF(MIN(${pig};${both})<${set.delivered};"not enough when a pig touches";${enough})))))`;
}

function addLevels(draft: Draft): void {
  draft.add(
    [text(LEVELS_TITLE), text('Volts'), text('Where'), BLANK, text('How sure'), BLANK, text('Source')],
    'heading',
  );
  for (const { stock, volts, meaning, certainty, source } of VOLT_LEVELS) {
    draft.add(
      [text(stock), text(volts), text(meaning), BLANK, text(certainty), BLANK, text(source)],
      'muted',
    );
  }
}
