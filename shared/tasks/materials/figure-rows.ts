/** The figures between layout and list: the line to put up, wire, joules, ground rods. */

import { answer, BLANK, formula, text } from '../../block/cells';
import type { BlockCell } from '../../contract';
import { symbolOf, type UnitSystem } from '../../units/units';
import type { Draft } from '../draft-block';
import { roundUp } from '../formula-parts';
import { tooFewStrandsFormula } from '../strands-setting';
import { type FenceKind, fenceType } from './fence-types';
import type { FenceFormulas } from './layout-formulas';
import type { AtATime } from './material-needs';
import type { MaterialsKey } from './materials-settings';
import * as words from './words';

export const FIGURES_TITLE = 'What it comes to';
/** The heights spill along its row. */
export const HEIGHTS_LABEL = 'Wire heights, lowest first';

export type FigureKey = 'line' | 'pieces' | 'corners' | 'wire' | 'energizers' | 'rods' | 'signs' | 'fixed';

/** Adds one row a figure and returns the fixed address of each. */
export function addFigures(
  fence: FenceFormulas,
  atATime: AtATime,
  on: {
    draft: Draft;
    units: UnitSystem;
    set: Readonly<Record<MaterialsKey, string>>;
    kind: FenceKind;
    strands: number;
  },
): Readonly<Record<FigureKey, string>> {
  const { draft, units, set, strands } = on;
  const type = fenceType(on.kind);
  const unit = symbolOf('length', units);
  draft.add([text(FIGURES_TITLE)], 'heading');
  const row = (label: string, body: string, unitText: string, note = '', format = '#,##0'): string =>
    draft.fixed(
      draft.add(rowCells(label, body, unitText, note, format), ['plain', 'plain', 'muted', 'muted']),
      1,
    );
  row('Outer fence', fence.outer, unit, words.ROUND_ALL);
  row('Dividing fence', fence.dividing, unit, words.BETWEEN_THEM);
  const isSet = atATime.kind === 'set';
  const whole = isSet ? fence.set : fence.all;
  const times = isSet ? `*${set.groups}` : '';
  const from = isSet ? words.fencedAtATime(atATime.paddocks, fence.inTurn ?? false) : words.LESS_WHAT_STANDS;
  const corners = row('Corner and junction posts of it', `(${whole.corners})${times}`, 'posts');
  const line = row('Line to put up', `MAX(0;(${whole.length})${times}-${set.standing})`, unit, from);
  const there = `ROUNDDOWN(${set.standing}/${set[type.pieceLength]}+1/10^9;0)`;
  const least = type.pieces === 'posts' ? corners : '0';
  const pieces = row(
    type.piecesLabel,
    `MAX(${least};(${whole.pieces})${times}-${there})`,
    type.pieces,
    type.pieceNote,
  );
  const energizers = row(
    'Energizers',
    isSet ? set.groups : '1',
    'each',
    isSet ? words.ENERGIZERS_NOTE : words.HANGS_TOGETHER,
  );
  const live = row(
    'Line under voltage',
    `(${line}+${set.standing})/${energizers}`,
    unit,
    words.FENCE_LINE_NOTE,
  );
  const wire = type.items.includes('rolls')
    ? row('Wire', `${line}*${set.strands}*(1+${set.allowance}/100)`, unit, words.ALL_STRANDS)
    : '0';
  const unitsText = `"${units}"`;
  const joules = row(
    'Output each energizer needs',
    `ENERGIZER_JOULES(${live};${type.loads.map((key) => set[key]).join('*')};${unitsText})`,
    'J',
    words.MANUAL_DECIDES,
    '0.0',
  );
  const rods = row(
    'Ground rods for each',
    `GROUND_RODS(IF(${set.energizerJoules}="";${joules};${set.energizerJoules});${set.rodLength};${unitsText})`,
    'rods',
    words.ROD_LENGTH_NOTE,
  );
  const signCount = row('Warning signs', signs(set), 'signs');
  const fixed = row(
    'Fixed fence for the same ground',
    `MAX(0;${fence.all.length}-${set.standing})`,
    unit,
    words.FIXED_ROUND_EACH,
  );
  if (type.isHung) addHeights(draft, set, strands, units);
  return { line, pieces, corners, energizers, wire, rods, signs: signCount, fixed };
}

function addHeights(
  draft: Draft,
  set: Readonly<Record<MaterialsKey, string>>,
  strands: number,
  units: UnitSystem,
): void {
  draft.add([
    text(HEIGHTS_LABEL),
    formula(`=STRAND_HEIGHTS(${set.pigWeight};${set.strands};"${units}")`, '0'),
    ...Array<BlockCell>(Math.max(0, strands - 1)).fill(answer('0')),
  ]);
  draft.add(
    [
      text(''),
      text(units === 'US' ? 'inches from the ground' : 'centimetres from the ground'),
      BLANK,
      formula(tooFewStrandsFormula(set.pigWeight, set.strands, units)),
    ],
    ['plain', 'muted', 'muted', 'warning'],
  );
}

function signs(set: Readonly<Record<MaterialsKey, string>>): string {
  return `IF(${set.publicSide}>0;${roundUp(`${set.publicSide}/${set.signSpacing}`)}+1;0)`;
}

function rowCells(label: string, body: string, unit: string, note: string, format: string): BlockCell[] {
  return [text(label), formula(`=${body}`, format), text(unit), text(note)];
}
