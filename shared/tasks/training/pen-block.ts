/** The training pen as a live list: one TRAINING_PEN call, one STRAND_HEIGHTS call, plain formulas for the rest. */

import { answer, BLANK, formula, text } from '../../block/cells';
import { composeBlock } from '../../block/compose-block';
import type { ComposedBlock } from '../../block/composed-block';
import { TITLES } from '../../block/own-words';
import type { BlockCell, BlockStyle } from '../../contract';
import { symbolOf, type UnitSystem } from '../../units/units';
import { type Draft, draftBlock, type Origin } from '../draft-block';
import { roundUp } from '../formula-parts';
import { addLines, addLookOut } from '../look-out';
import { addSettings, addUnits, type SettingSpec, type SettingValues } from '../settings';
import { strandsSetting, tooFewStrandsFormula } from '../strands-setting';
import * as words from './words';

export const PEN_BLOCK = 'SOUNDER_TRAINING_PEN';
export const PEN_HEADINGS = ['Item', 'Need', 'Unit', 'On hand', 'To buy'] as const;

export const HEIGHTS_LABEL = 'Wire heights, here and on pasture';
const HEIGHTS_ROW: readonly BlockStyle[] = ['plain', 'plain', 'plain', 'plain', 'muted'];

export type PenKey = 'head' | 'weight' | 'panel' | 'spacing' | 'area' | 'strands';
export type PenSettings = SettingValues<PenKey>;

/** Start values are those of TRAINING_PEN, so that a cell typed by hand agrees with the block. */
export const PEN_SETTINGS: readonly SettingSpec<PenKey>[] = [
  { key: 'head', label: 'Pigs', unit: 'head', start: 8, note: 'Trained together.', min: 1, whole: true },
  {
    key: 'weight',
    label: 'Weight of one',
    quantity: 'mass',
    start: { US: 60, metric: 27 },
    note: words.WEIGHT_NOTE,
    above: 0,
    max: 400,
  },
  {
    key: 'panel',
    label: 'Length of a panel',
    quantity: 'length',
    start: { US: 16, metric: 4.9 },
    note: words.PANEL_NOTE,
    above: 0,
  },
  {
    key: 'spacing',
    label: 'Widest gap between posts',
    quantity: 'length',
    start: { US: 16 / 3, metric: 4.9 / 3 },
    note: words.POST_GAP_NOTE,
    above: 0,
  },
  {
    key: 'area',
    label: 'Floor for each pig',
    quantity: 'floorArea',
    start: { US: 25, metric: 2.4 },
    note: words.FLOOR_NOTE,
    above: 0,
  },
  strandsSetting('Live wires', 'weight' satisfies PenKey),
];

/** What TRAINING_PEN answers with, row by row. "live wire" and insulators are for one wire. */
const LINES = ['panels', 'side', 'posts', 'clips', 'insulators', 'wire', 'height'] as const;
const LINE_FORMATS: Readonly<Record<(typeof LINES)[number], string>> = {
  panels: '0',
  side: '0.0',
  posts: '0',
  clips: '0',
  insulators: '0',
  wire: '0.0',
  height: '0.0',
};
/** Rows that one TRAINING_PEN call fills. */
const COUNTED: readonly string[] = ['panels', 'posts', 'clips'];

/** The last one holds nothing: the notes of the settings are shown across it. */
const WIDTHS = [240, 90, 90, 90, 90, 420];

const INPUT_ROW: readonly BlockStyle[] = ['plain', 'plain', 'muted', 'input', 'plain'];

/** `onHand` holds typed cells by the item's place in the list, 0 for the first. */
export function composePenBlock(
  settings: PenSettings,
  onHand: readonly BlockCell[],
  units: UnitSystem,
  origin: Origin,
): ComposedBlock {
  const draft = draftBlock(origin);
  draft.add([text(TITLES.pen)], 'title');
  draft.add([text(words.LIST_FOLLOWS)], 'muted');
  draft.add([text(words.PEN_HEAD_CAUTION)], 'warning');
  addUnits(draft, units);
  const set = addSettings(draft, PEN_SETTINGS, settings, units);
  draft.add();
  draft.add([...PEN_HEADINGS.map(text), BLANK], 'heading');
  const first = addPenLines(draft, set, onHand, units);
  addWires(draft, set, onHand, first);
  draft.add();
  addHeights(draft, set, { units, strands: settings.strands ?? 1 });
  draft.add();
  addLookOut(draft, words.PEN_CAUTIONS);
  addLines(draft, words.POST_SIDES, 'muted');
  return {
    ...composeBlock(draft.rows),
    rules: [],
    widths: WIDTHS,
  };
}

function addPenLines(
  draft: Draft,
  set: Readonly<Record<PenKey, string>>,
  onHand: readonly BlockCell[],
  units: UnitSystem,
): number {
  const first = draft.next();
  const call = `=TRAINING_PEN(${set.head};${set.weight};${set.panel};${set.spacing};${set.area};"${units}")`;
  LINES.forEach((line, i) => {
    const counted = COUNTED.includes(line);
    const row = draft.next();
    // One call fills item, need and unit of all rows; those cells stay blank here.
    const cells = [i === 0 ? formula(call) : answer(), answer(LINE_FORMATS[line]), answer()];
    const typed = counted ? [onHand[i] ?? BLANK, toBuy(draft, row)] : [];
    draft.add([...cells, ...typed], counted ? INPUT_ROW : 'plain');
  });
  return first;
}

function addWires(
  draft: Draft,
  set: Readonly<Record<PenKey, string>>,
  onHand: readonly BlockCell[],
  first: number,
): void {
  const times = [
    { item: 'offset insulators, all wires', line: 'insulators' },
    { item: 'live wire, all wires', line: 'wire' },
  ] as const;
  times.forEach(({ item, line }, i) => {
    const source = first + LINES.indexOf(line);
    const row = draft.next();
    const need = formula(`=${draft.at(source, 1)}*${set.strands}`, '#,##0');
    const unit = formula(`=${draft.at(source, 2)}`);
    draft.add([text(item), need, unit, onHand[LINES.length + i] ?? BLANK, toBuy(draft, row)], INPUT_ROW);
  });
}

/** The wires hang as on the fence that the pigs go to. */
function addHeights(
  draft: Draft,
  set: Readonly<Record<PenKey, string>>,
  { units, strands }: { readonly units: UnitSystem; readonly strands: number },
): void {
  const unit = symbolOf('height', units);
  const heights = formula(`=STRAND_HEIGHTS(${set.weight};${set.strands};"${units}")`, '0.0');
  const rest = [2, 3].map((i) => (i <= strands ? answer('0.0') : BLANK));
  draft.add([text(`${HEIGHTS_LABEL} (${unit})`), heights, ...rest, text(words.HEIGHTS_NOTE)], HEIGHTS_ROW);
  draft.add([formula(tooFewStrandsFormula(set.weight, set.strands, units))], 'warning');
}

function toBuy(draft: Draft, row: number): BlockCell {
  const [need, have] = [draft.at(row, 1), draft.at(row, 3)];
  return formula(`=IF(ISNUMBER(${need});MAX(0;${roundUp(`(${need}-SUM(${have}))`)});"")`, '#,##0');
}
