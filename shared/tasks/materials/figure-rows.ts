/** The figures between layout and list: the line to put up, wire, joules, ground rods. */

import { answer, formula, text } from '../../block/cells';
import type { BlockCell } from '../../contract';
import { symbolOf, type UnitSystem } from '../../units/units';
import type { Draft } from '../draft-block';
import { roundUp } from '../formula-parts';
import type { FenceFormulas } from './layout-formulas';
import type { AtATime } from './material-needs';
import type { MaterialsKey } from './materials-settings';

export const FIGURES_TITLE = 'What it comes to';
/** The heights spill along its row. */
export const HEIGHTS_LABEL = 'Wire heights, lowest first';

export type FigureKey =
  | 'line'
  | 'posts'
  | 'corners'
  | 'live'
  | 'wire'
  | 'joules'
  | 'rods'
  | 'signs'
  | 'fixed';

/** Adds one row a figure and returns the fixed address of each. */
export function addFigures(
  fence: FenceFormulas,
  atATime: AtATime,
  on: { draft: Draft; units: UnitSystem; set: Readonly<Record<MaterialsKey, string>>; strands: number },
): Readonly<Record<FigureKey, string>> {
  const { draft, units, set, strands } = on;
  const unit = symbolOf('length', units);
  draft.add([text(FIGURES_TITLE)], 'heading');
  const row = (label: string, body: string, unitText: string, note = '', format = '0'): string =>
    draft.fixed(
      draft.add(rowCells(label, body, unitText, note, format), ['plain', 'plain', 'muted', 'muted']),
      1,
    );
  row('Outer fence', fence.outer, unit, 'Everything fenced at once.');
  row('Dividing fence', fence.dividing, unit, 'Shared sides counted once.');
  const many = atATime.kind === 'set';
  const whole = many ? fence.set : fence.all;
  const times = many ? `*${set.groups}` : '';
  const sets = many ? 'The largest set, once for each group.' : 'All paddocks, less what stands already.';
  const corners = row('Corner and junction posts of it', `(${whole.corners})${times}`, 'posts');
  const line = row('Line to put up', `MAX(0;(${whole.length})${times}-${set.standing})`, unit, sets);
  const posts = row(
    'Posts along it, corners among them',
    `MAX(${corners};(${whole.posts})${times}-ROUNDDOWN(${set.standing}/${set.postSpacing}+1/10^9;0))`,
    'posts',
  );
  const live = row(
    'Line under voltage',
    `${line}+${set.standing}`,
    unit,
    'Fence line, not counted per strand.',
  );
  const wire = row('Wire', `${line}*${set.strands}*(1+${set.allowance}/100)`, unit, 'With the allowance.');
  const unitsText = `"${units}"`;
  const joules = row(
    'Output the energizer needs',
    `ENERGIZER_JOULES(${live};${set.loadFactor};${unitsText})`,
    'J',
    'The energizer’s manual and local code decide.',
    '0.0',
  );
  const rods = row(
    'Ground rods for it',
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
  draft.add([
    text(HEIGHTS_LABEL),
    formula(`=STRAND_HEIGHTS(${set.pigWeight};${set.strands};${unitsText})`, '0'),
    ...Array<BlockCell>(Math.max(0, strands - 1)).fill(answer('0')),
  ]);
  draft.add(
    [text(''), text(units === 'US' ? 'inches from the ground' : 'centimetres from the ground')],
    'muted',
  );
  return { line, posts, corners, live, wire, joules, rods, signs: signCount, fixed };
}

function signs(set: Readonly<Record<MaterialsKey, string>>): string {
  return `IF(${set.publicSide}>0;${roundUp(`${set.publicSide}/${set.signSpacing}`)}+1;0)`;
}

function rowCells(label: string, body: string, unit: string, note: string, format: string): BlockCell[] {
  return [text(label), formula(`=${body}`, format), text(unit), text(note)];
}
