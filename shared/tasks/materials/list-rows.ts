/** A paddock list in the block: every paddock's fence, the sides it shares, and the set that begins with it. */
import { BLANK, formula, number, text } from '../../block/cells';
import type { BlockCell } from '../../contract';
import { memoryRow } from '../../lists/list-memory';
import { ifFilled, listLookup } from '../../table/list-lookup';
import { fromInside, symbolOf } from '../../units/units';
import type { Draft } from '../draft-block';
import { plus, roundUp } from '../formula-parts';
import type { LaidPaddock, ListLayout, Touching } from './layout';
import { type FenceFormulas, LAYOUT_TITLE, type LayoutOn } from './layout-formulas';
import { setFrom, sidesInSet } from './list-fence';
import { crossings, isRectangle, type SharedSide, sharedSides } from './shared-sides';

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

export function addList(list: ListLayout, on: LayoutOn): FenceFormulas {
  const { draft, units, setPaddocks } = on;
  const sides = sharedSides(list);
  draft.add([text(LAYOUT_TITLE)], 'heading');
  draft.add([text(TOUCHING_LABEL), text(TOUCHING_WORDS[list.touching])]);
  if (on.list) draft.add(memoryRow(on.list.list), ['plain', 'muted', 'muted']);
  const unit = symbolOf('length', units);
  draft.add(
    [BLANK, ...Array(3).fill(text(unit)), text('posts'), text(unit), text('posts'), text(unit)],
    'muted',
  );
  // Sums begin at the headings: a list of one paddock would be a range of one cell.
  const head = draft.add(LIST_HEADINGS.map(text), 'heading');
  const first = draft.next();
  const last = first + list.paddocks.length - 1;
  list.paddocks.forEach((paddock, at) => {
    draft.add([
      ...paddockCells(paddock, first + at, on),
      ...sharedCells(list, sides, at, first, on),
      ...setCells(list, sides, at, first, on),
    ]);
  });
  const total = (column: number): string => `SUM(${draft.down(head, last, column)})`;
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
      length: `MAX(${draft.down(head, last, 7)})`,
      posts: `MAX(${draft.down(head, last, 8)})`,
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
    if (lookup !== undefined) return formula(ifFilled(lookup), '0.0');
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
  const width = `SQRT(${area}*${squares}/${on.shape})`;
  return formula(lookup === undefined ? `=${width}` : ifFilled(lookup, width), '0.0');
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
