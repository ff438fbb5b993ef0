/** The figures between layout and list: the line to put up, wire, joules, ground rods. */

import { answer, formula, text } from '../../block/cells';
import type { BlockCell } from '../../contract';
import { symbolOf, type UnitSystem } from '../../units/units';
import type { Draft } from '../draft-block';
import { roundUp } from '../formula-parts';
import { type FenceKind, fenceType } from './fence-types';
import type { FenceFormulas } from './layout-formulas';
import type { AtATime } from './material-needs';
import type { MaterialsKey } from './materials-settings';

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
  const row = (label: string, body: string, unitText: string, note = '', format = '0'): string =>
    draft.fixed(
      draft.add(rowCells(label, body, unitText, note, format), ['plain', 'plain', 'muted', 'muted']),
      1,
    );
  row('Outer fence', fence.outer, unit, 'Round all paddocks together.');
  row('Dividing fence', fence.dividing, unit, 'Between them, shared sides counted once.');
  const isSet = atATime.kind === 'set';
  const whole = isSet ? fence.set : fence.all;
  const times = isSet ? `*${set.groups}` : '';
  const from = isSet
    ? `${atATime.paddocks} paddocks stand fenced for a group at one time. The longest ${atATime.paddocks} that follow one another, times the groups out at once.`
    : 'All paddocks, less what stands already.';
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
    isSet
      ? 'One for each group out at once: never two on one fence. Fences of two stay 2.5 m (8 ft) apart (IEC annex, second hand), their ground rods too (judgement); 10 m (33 ft) is better (die grüne, published).'
      : 'For all that hangs together; a paddock that stands apart takes a lead to it, or an energizer of its own.',
  );
  const live = row(
    'Line under voltage',
    `(${line}+${set.standing})/${energizers}`,
    unit,
    'Of each energizer. Fence line, not counted per strand.',
  );
  const wire = type.items.includes('rolls')
    ? row('Wire', `${line}*${set.strands}*(1+${set.allowance}/100)`, unit, 'All strands, with the allowance.')
    : '0';
  const unitsText = `"${units}"`;
  const joules = row(
    'Output each energizer needs',
    `ENERGIZER_JOULES(${live};${type.loads.map((key) => set[key]).join('*')};${unitsText})`,
    'J',
    'The energizer’s manual and local code decide.',
    '0.0',
  );
  const rods = row(
    'Ground rods for each',
    `GROUND_RODS(IF(${set.energizerJoules}="";${joules};${set.energizerJoules});${set.rodLength};${unitsText})`,
    'rods',
    '3 ft of rod a joule (NRCS Virginia 382 and Gerrish, published); never less than 3 m (die grüne, Idele, published).',
  );
  const signCount = row('Warning signs', signs(set), 'signs');
  const fixed = row(
    'Fixed fence for the same ground',
    `MAX(0;${fence.all.length}-${set.standing})`,
    unit,
    'Woven wire or panels stand round every paddock.',
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
    [text(''), text(units === 'US' ? 'inches from the ground' : 'centimetres from the ground')],
    'muted',
  );
}

function signs(set: Readonly<Record<MaterialsKey, string>>): string {
  return `IF(${set.publicSide}>0;${roundUp(`${set.publicSide}/${set.signSpacing}`)}+1;0)`;
}

function rowCells(label: string, body: string, unit: string, note: string, format: string): BlockCell[] {
  return [text(label), formula(`=${body}`, format), text(unit), text(note)];
}
