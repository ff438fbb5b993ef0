/** The layout's part of the materials block: the paddocks, the fence they make, and where each figure stands. */
import { answer, BLANK, formula, text } from '../../block/cells';
import { fromInside } from '../../units/units';
import { roundUp } from '../formula-parts';
import { addSettings, type SettingSpec } from '../settings';
import { jointsOfSet, sharedInLine } from './grid-fence';
import type { GridLayout, Layout } from './layout';
import { type FenceFormula, type FenceFormulas, LAYOUT_TITLE, type LayoutOn } from './layout-formulas';
import { addList } from './list-rows';
import type { AtATime } from './material-needs';

export function addLayout(layout: Layout, on: LayoutOn): FenceFormulas {
  return layout.kind === 'grid' ? addGrid(layout, on) : addList(layout, on);
}

export function setSize(atATime: AtATime): number {
  return atATime.kind === 'set' ? atATime.paddocks : 1;
}

export const GRID_FENCE_LABEL = 'Fence, shared sides once';

export type GridKey = 'rows' | 'columns' | 'width' | 'length';

/** The most paddocks that the page lays out. */
const MOST = 500;

export const GRID_SETTINGS: readonly SettingSpec<GridKey>[] = [
  { key: 'rows', label: 'Rows of paddocks', unit: 'rows', min: 1, max: MOST, whole: true, note: '' },
  { key: 'columns', label: 'Paddocks in a row', unit: 'paddocks', min: 1, max: MOST, whole: true, note: '' },
  { key: 'width', label: 'Width of a paddock', quantity: 'length', above: 0, note: 'Along the row.' },
  { key: 'length', label: 'Length of a paddock', quantity: 'length', above: 0, note: 'Across the row.' },
];

function addGrid(grid: GridLayout, on: LayoutOn): FenceFormulas {
  const { draft, units, pieceLength: piece, setPaddocks } = on;
  draft.add([text(LAYOUT_TITLE)], 'heading');
  const values = {
    rows: grid.rows,
    columns: grid.columns,
    width: fromInside(grid.widthMeters, 'length', units),
    length: fromInside(grid.lengthMeters, 'length', units),
  };
  const { rows: r, columns: c, width: w, length: l } = addSettings(draft, GRID_SETTINGS, values, units);
  draft.add([BLANK, text('Outer'), text('Dividing'), text('Both')], 'muted');
  const call = formula(`=FENCE_GRID(${r};${c};${w};${l})`, '0');
  const line = draft.add([text(GRID_FENCE_LABEL), call, answer('0'), answer('0')]);
  const whole = (line: string): string => roundUp(`(${line})/${piece}`);
  const shared = sharedInLine(grid) === grid.lengthMeters && grid.columns > 1 ? l : w;
  const nodes = `(${r}+1)*(${c}+1)`;
  const ring = `2*(${w}+${l})`;
  const [across, down] = [whole(w), whole(l)];
  const allPieces = {
    posts: `${nodes}+(${r}+1)*${c}*(${across}-1)+(${c}+1)*${r}*(${down}-1)`,
    nets: `${whole(ring)}+(${c}-1)*${whole(`${ring}-${l}`)}+(${r}-1)*${whole(`${ring}-${w}`)}+(${r}-1)*(${c}-1)*${whole(`${w}+${l}`)}`,
  };
  const all: FenceFormula = {
    length: draft.fixed(line, 3),
    pieces: allPieces[on.pieces],
    corners: nodes,
  };
  const k = setPaddocks;
  const joints = jointsOfSet(k);
  const setPieces = {
    posts: `${k}*2*(${across}+${down})-${joints}*(${whole(shared)}+1)`,
    nets: `${k - joints}*${whole(ring)}+${joints}*${whole(`${ring}-${shared}`)}`,
  };
  const set: FenceFormula = {
    length: `${k}*${ring}-${joints}*${shared}`,
    pieces: setPieces[on.pieces],
    corners: String(4 * k - 2 * joints),
  };
  const [outer, dividing] = [draft.fixed(line, 1), draft.fixed(line, 2)];
  return { outer, dividing, all, set: k >= grid.rows * grid.columns ? all : set };
}
