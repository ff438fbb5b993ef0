/** The layout's part of the materials block: the paddocks, the fence they make, and where each figure stands. */

import { BLANK, formula, number, text } from '../../block/cells';
import type { BlockCell } from '../../contract';
import type { PaddockList } from '../../lists/model';
import { listLookup } from '../../table/list-lookup';
import type { ListSource } from '../../table/model';
import { fromInside, symbolOf, type UnitSystem } from '../../units/units';
import type { Draft } from '../draft-block';
import { plus, roundUp } from '../formula-parts';
import { addSettings, type SettingSpec } from '../settings';
import { jointsOfSet, sharedInLine } from './grid-fence';
import type { GridLayout, LaidPaddock, Layout, ListLayout, Touching } from './layout';
import { setFrom, sidesInSet } from './list-fence';
import type { AtATime } from './material-needs';
import { crossings, isRectangle, type SharedSide, sharedSides } from './shared-sides';

/** Formula bodies, without "=". Lengths in the block's unit. */
export interface FenceFormulas {
  readonly outer: string;
  readonly dividing: string;
  readonly all: FenceFormula;
  readonly set: FenceFormula;
}
export interface FenceFormula {
  readonly length: string;
  readonly posts: string;
  readonly corners: string;
}

/** Addresses that the layout's formulas hang on. */
interface LayoutOn {
  readonly draft: Draft;
  readonly units: UnitSystem;
  readonly postSpacing: string;
  readonly shape: string;
  /** The grower's list, to look sides up there. */
  readonly list: ListSource<PaddockList> | undefined;
  readonly setPaddocks: number;
}

export function addLayout(layout: Layout, on: LayoutOn): FenceFormulas {
  return layout.kind === 'grid' ? addGrid(layout, on) : addList(layout, on);
}

export function setSize(atATime: AtATime): number {
  return atATime.kind === 'set' ? atATime.paddocks : 1;
}

export type GridKey = 'rows' | 'columns' | 'width' | 'length';

export const GRID_SETTINGS: readonly SettingSpec<GridKey>[] = [
  { key: 'rows', label: 'Rows of paddocks', unit: 'rows', min: 1, whole: true, note: '' },
  { key: 'columns', label: 'Paddocks in a row', unit: 'paddocks', min: 1, whole: true, note: '' },
  { key: 'width', label: 'Width of a paddock', quantity: 'length', above: 0, note: 'Along the row.' },
  { key: 'length', label: 'Length of a paddock', quantity: 'length', above: 0, note: 'Across the row.' },
];

function addGrid(grid: GridLayout, on: LayoutOn): FenceFormulas {
  const { draft, units, postSpacing: gap, setPaddocks } = on;
  draft.add([text(LAYOUT_TITLE)], 'heading');
  const values = {
    rows: grid.rows,
    columns: grid.columns,
    width: fromInside(grid.widthMeters, 'length', units),
    length: fromInside(grid.lengthMeters, 'length', units),
  };
  const { rows: r, columns: c, width: w, length: l } = addSettings(draft, GRID_SETTINGS, values, units);
  draft.add([BLANK, text('Outer'), text('Dividing'), text('Both')], 'muted');
  const line = draft.add([
    text('Fence, shared sides once'),
    formula(`=FENCE_GRID(${r};${c};${w};${l})`, '0'),
  ]);
  const across = roundUp(`${w}/${gap}`);
  const down = roundUp(`${l}/${gap}`);
  const shared = sharedInLine(grid) === grid.lengthMeters && grid.columns > 1 ? l : w;
  const nodes = `(${r}+1)*(${c}+1)`;
  const all: FenceFormula = {
    length: draft.fixed(line, 3),
    posts: `${nodes}+(${r}+1)*${c}*(${across}-1)+(${c}+1)*${r}*(${down}-1)`,
    corners: nodes,
  };
  const k = setPaddocks;
  const joints = jointsOfSet(k);
  const set: FenceFormula = {
    length: `${k}*2*(${w}+${l})-${joints}*${shared}`,
    posts: `${k}*2*(${across}+${down})-${joints}*(${roundUp(`${shared}/${gap}`)}+1)`,
    corners: String(4 * k - 2 * joints),
  };
  const [outer, dividing] = [draft.fixed(line, 1), draft.fixed(line, 2)];
  return { outer, dividing, all, set: k >= grid.rows * grid.columns ? all : set };
}

export const LAYOUT_TITLE = 'The layout';
export const TOUCHING_LABEL = 'Paddocks touch';
export const TOUCHING_WORDS: Readonly<Record<Touching, string>> = {
  lengths: 'along their lengths',
  widths: 'along their widths',
  alone: 'nowhere',
};

export const LIST_HEADINGS = [
  'Paddock',
  'Width',
  'Length',
  'Fence round it',
  'Posts round it',
  'Shared with earlier',
  'Posts on it',
  'Set from here',
  'Posts of the set',
];

function addList(list: ListLayout, on: LayoutOn): FenceFormulas {
  const { draft, units, setPaddocks } = on;
  const sides = sharedSides(list);
  draft.add([text(LAYOUT_TITLE)], 'heading');
  draft.add([text(TOUCHING_LABEL), text(TOUCHING_WORDS[list.touching])]);
  const unit = symbolOf('length', units);
  draft.add(
    [BLANK, ...Array(3).fill(text(unit)), text('posts'), text(unit), text('posts'), text(unit)],
    'muted',
  );
  draft.add(LIST_HEADINGS.map(text), 'heading');
  const first = draft.next();
  const last = first + list.paddocks.length - 1;
  list.paddocks.forEach((paddock, at) => {
    draft.add([
      ...paddockCells(paddock, first + at, on),
      ...sharedCells(list, sides, at, first, on),
      ...setCells(list, sides, at, first, on),
    ]);
  });
  const total = (column: number): string => `SUM(${draft.down(first, last, column)})`;
  const met = crossings(list.paddocks.length, sides);
  const corners = (set: readonly number[]): number => 4 * set.length - 2 * sidesInSet(set, sides).length;
  const sets = list.paddocks.map((_, at) => corners(setFrom(at, setPaddocks, list.paddocks.length)));
  return {
    outer: `${total(3)}-2*${total(5)}`,
    dividing: total(5),
    all: {
      length: `${total(3)}-${total(5)}`,
      posts: `${total(4)}-${total(6)}+${met}`,
      corners: String(4 * list.paddocks.length - 2 * sides.length + met),
    },
    set: {
      length: `MAX(${draft.down(first, last, 7)})`,
      posts: `MAX(${draft.down(first, last, 8)})`,
      corners: String(Math.max(0, ...sets)),
    },
  };
}

function paddockCells(paddock: LaidPaddock, row: number, on: LayoutOn): BlockCell[] {
  const { draft, postSpacing: gap } = on;
  const [name, w, l, round] = [0, 1, 2, 3].map((column) => draft.at(row, column)) as [
    string,
    string,
    string,
    string,
  ];
  const side = (field: 'width' | 'length' | 'fenceLength', meters: number | undefined): BlockCell => {
    const lookup = listLookup(on.list, field, paddock.name, name, on.units, false);
    if (lookup !== undefined) return formula(`=${lookup}`, '0.0');
    return meters === undefined ? BLANK : number(fromInside(meters, 'length', on.units), '0.0');
  };
  const label = text(paddock.name);
  if (!isRectangle(paddock)) {
    const fence = side('fenceLength', paddock.fenceMeters);
    return [label, BLANK, BLANK, fence, formula(`=${roundUp(`${round}/${gap}`)}`)];
  }
  const guessed = paddock.guessedFromSquareMeters;
  return [
    label,
    guessed === undefined
      ? side('width', paddock.widthMeters)
      : guessedWidth(guessed, paddock.name, name, on),
    guessed === undefined ? side('length', paddock.lengthMeters) : formula(`=${w}*${on.shape}`, '0.0'),
    formula(`=2*(${w}+${l})`, '0.0'),
    formula(`=2*${roundUp(`${w}/${gap}`)}+2*${roundUp(`${l}/${gap}`)}`),
  ];
}

/** Width of a rectangle of that area and of the usual shape. */
function guessedWidth(squareMeters: number, paddock: string, name: string, on: LayoutOn): BlockCell {
  const lookup = listLookup(on.list, 'area', paddock, name, on.units, false);
  // Square feet in an acre and square metres in a hectare, exactly.
  const squares = on.units === 'US' ? 43560 : 10000;
  const sides = fromInside(squareMeters, 'area', on.units);
  const area = lookup ?? `${Math.round(sides * 1e6)}/10^6`;
  return formula(`=SQRT(${area}*${squares}/${on.shape})`, '0.0');
}

/** The side two paddocks share: the shorter of the two that touch. */
function sharedFormula(list: ListLayout, side: SharedSide, first: number, draft: Draft): string {
  const column = list.touching === 'lengths' ? 2 : 1;
  return `MIN(${draft.at(first + side.earlier, column)};${draft.at(first + side.later, column)})`;
}

function sharedCells(
  list: ListLayout,
  sides: readonly SharedSide[],
  at: number,
  first: number,
  { draft, postSpacing: gap }: LayoutOn,
): BlockCell[] {
  const mine = sides
    .filter(({ later }) => later === at)
    .map((side) => sharedFormula(list, side, first, draft));
  if (mine.length === 0) return [BLANK, BLANK];
  const posts = mine.map((shared) => `${roundUp(`${shared}/${gap}`)}+1`);
  return [formula(`=${plus(mine)}`, '0.0'), formula(`=${plus(posts)}`)];
}

function setCells(
  list: ListLayout,
  sides: readonly SharedSide[],
  at: number,
  first: number,
  { draft, setPaddocks, postSpacing: gap }: LayoutOn,
): BlockCell[] {
  const set = setFrom(at, setPaddocks, list.paddocks.length);
  const inside = sidesInSet(set, sides).map((side) => sharedFormula(list, side, first, draft));
  const add = (column: number): string => plus(set.map((paddock) => draft.at(first + paddock, column)));
  const lengthOff = inside.map((shared) => `-${shared}`).join('');
  const postsOff = inside.map((shared) => `-(${roundUp(`${shared}/${gap}`)}+1)`).join('');
  return [formula(`=${add(3)}${lengthOff}`, '0.0'), formula(`=${add(4)}${postsOff}`)];
}
