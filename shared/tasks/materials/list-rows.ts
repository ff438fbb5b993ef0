/** A paddock list in the block: every paddock's fence, the sides it shares, and the set that begins with it. */
import { BLANK, formula, number, text } from '../../block/cells';
import type { BlockCell } from '../../contract';
import { memoryRow } from '../../lists/list-memory';
import { ifFilled, listLookup } from '../../table/list-lookup';
import { fromInside, symbolOf } from '../../units/units';
import type { Draft } from '../draft-block';
import { lengthFormat, plus, roundUp } from '../formula-parts';
import type { FenceType } from './fence-types';
import type { LaidPaddock, ListLayout, Touching } from './layout';
import { type FenceFormulas, LAYOUT_TITLE, type LayoutOn } from './layout-formulas';
import { setsFrom, sidesInSet } from './list-fence';
import { crossings, isRectangle, type SharedSide, sharedSides } from './shared-sides';

export const TOUCHING_LABEL = 'Paddocks touch';
export const TOUCHING_WORDS: Readonly<Record<Touching, string>> = {
  lengths: 'along their lengths',
  widths: 'along their widths',
  alone: 'nowhere',
};

/** Columns of lengths, the same for every kind of fence; behind them what it is counted in. */
const LENGTH_HEADINGS = [
  'Paddock',
  'Width',
  'Length',
  'Fence round it',
  'Shared with earlier',
  'Set from here',
] as const;
const AT = {
  name: 0,
  width: 1,
  length: 2,
  round: 3,
  shared: 4,
  set: 5,
  pieces: LENGTH_HEADINGS.length,
} as const;

/** What the paddocks take of posts or nets, as columns behind the lengths and as a sum of them. */
interface PieceColumns {
  readonly headings: readonly string[];
  readonly cells: (row: ListedRow) => readonly BlockCell[];
  readonly all: (down: (column: number) => string, crossings: number) => string;
}

/** A paddock with what it shares, and those of the set that begins with it, as formulas. */
interface ListedRow {
  readonly row: number;
  readonly isRectangle: boolean;
  /** With paddocks earlier in the list. */
  readonly shared: readonly string[];
  readonly set: readonly { readonly row: number; readonly shared: readonly string[] }[];
  readonly draft: Draft;
  readonly piece: string;
}

const PIECE_COLUMNS: Readonly<Record<FenceType['pieces'], PieceColumns>> = {
  posts: {
    headings: ['Posts round it', 'Posts on it', 'Posts of the set'],
    cells: ({ row, isRectangle, shared, set, draft, piece }) => {
      const onSide = (side: string): string => `${roundUp(`${side}/${piece}`)}+1`;
      const [width, length, round] = [AT.width, AT.length, AT.round].map((column) =>
        roundUp(`${draft.at(row, column)}/${piece}`),
      );
      const inSet = set.flatMap((one) => one.shared).map((side) => `-(${onSide(side)})`);
      return [
        formula(isRectangle ? `=2*${width}+2*${length}` : `=${round}`, '0'),
        shared.length === 0 ? BLANK : formula(`=${plus(shared.map(onSide))}`, '0'),
        set.length === 0
          ? BLANK
          : formula(`=${plus(set.map((one) => draft.at(one.row, AT.pieces)))}${inSet.join('')}`, '0'),
      ];
    },
    all: (down, met) => `SUM(${down(AT.pieces)})-SUM(${down(AT.pieces + 1)})+${met}`,
  },
  nets: {
    headings: ['Nets for it', 'Nets of the set'],
    cells: ({ row, shared, set, draft, piece }) => {
      const nets = (one: number, off: readonly string[]): string =>
        roundUp(`(${[draft.at(one, AT.round), ...off].join('-')})/${piece}`);
      return [
        formula(`=${nets(row, shared)}`, '0'),
        set.length === 0 ? BLANK : formula(`=${plus(set.map((one) => nets(one.row, one.shared)))}`, '0'),
      ];
    },
    all: (down) => `SUM(${down(AT.pieces)})`,
  },
};
/** All that a layout of either kind may hold. */
export const LIST_HEADINGS: readonly string[] = [
  ...LENGTH_HEADINGS,
  ...Object.values(PIECE_COLUMNS).flatMap(({ headings }) => headings),
];

export function addList(list: ListLayout, on: LayoutOn): FenceFormulas {
  const { draft, units, setPaddocks, pieceLength: piece } = on;
  const columns = PIECE_COLUMNS[on.pieces];
  const sides = sharedSides(list);
  draft.add([text(LAYOUT_TITLE)], 'heading');
  draft.add([text(TOUCHING_LABEL), text(TOUCHING_WORDS[list.touching])]);
  if (on.list) draft.add(memoryRow(on.list.list), ['plain', 'muted', 'muted']);
  const unit = symbolOf('length', units);
  draft.add([BLANK, ...Array(5).fill(text(unit)), ...columns.headings.map(() => text(on.pieces))], 'muted');
  // Sums begin at the headings: a list of one paddock would be a range of one cell.
  const head = draft.add([...LENGTH_HEADINGS, ...columns.headings].map(text), 'heading');
  const first = draft.next();
  const last = first + list.paddocks.length - 1;
  const sharedBy = (at: number, among: readonly SharedSide[]): string[] =>
    among.filter(({ later }) => later === at).map((side) => sharedFormula(list, side, first, draft));
  const sets = setsFrom(list, setPaddocks);
  list.paddocks.forEach((paddock, at) => {
    const row = first + at;
    const shared = sharedBy(at, sides);
    const set = sets[at]!.map((one) => ({
      row: first + one,
      shared: sharedBy(one, sidesInSet(sets[at]!, sides)),
    }));
    const off = set.flatMap((one) => one.shared).map((side) => `-${side}`);
    draft.add([
      ...paddockCells(paddock, row, on),
      shared.length === 0 ? BLANK : formula(`=${plus(shared)}`, lengthFormat(on.units)),
      set.length === 0
        ? BLANK
        : formula(
            `=${plus(set.map((one) => draft.at(one.row, AT.round)))}${off.join('')}`,
            lengthFormat(on.units),
          ),
      ...columns.cells({ row, isRectangle: isRectangle(paddock), shared, set, draft, piece }),
    ]);
  });
  const down = (column: number): string => draft.down(head, last, column);
  const met = crossings(list.paddocks.length, sides);
  const corners = (set: readonly number[]): number => 4 * set.length - 2 * sidesInSet(set, sides).length;
  return {
    inTurn: list.inTurn !== undefined,
    outer: `SUM(${down(AT.round)})-2*SUM(${down(AT.shared)})`,
    dividing: `SUM(${down(AT.shared)})`,
    all: {
      length: `SUM(${down(AT.round)})-SUM(${down(AT.shared)})`,
      pieces: columns.all(down, met),
      corners: String(4 * list.paddocks.length - 2 * sides.length + met),
    },
    set: {
      length: `MAX(${down(AT.set)})`,
      pieces: `MAX(${down(AT.pieces + columns.headings.length - 1)})`,
      corners: String(Math.max(0, ...sets.map(corners))),
    },
  };
}

function paddockCells(paddock: LaidPaddock, row: number, on: LayoutOn): BlockCell[] {
  const { draft } = on;
  const [name, w, l] = [draft.at(row, AT.name), draft.at(row, AT.width), draft.at(row, AT.length)];
  const side = (field: 'width' | 'length' | 'fenceLength', meters: number | undefined): BlockCell => {
    const lookup = listLookup(on.list, field, paddock.name, name, on.units, false);
    if (lookup !== undefined) return formula(ifFilled(lookup), lengthFormat(on.units));
    return meters === undefined
      ? BLANK
      : number(fromInside(meters, 'length', on.units), lengthFormat(on.units));
  };
  const label = text(paddock.name);
  if (!isRectangle(paddock)) {
    return [label, BLANK, BLANK, side('fenceLength', paddock.fenceMeters)];
  }
  const { guessedFromSquareMeters: guessed, givenSide, widthMeters, lengthMeters } = paddock;
  const byArea = (made: (area: string) => string): BlockCell =>
    formulaOfArea(guessed ?? 0, paddock.name, name, on, made);
  const isGiven = (one: 'width' | 'length'): boolean => guessed === undefined || givenSide === one;
  const long = givenSide
    ? byArea((area) => `${area}/${w}`)
    : formula(`=${w}*${on.shape}`, lengthFormat(on.units));
  return [
    label,
    isGiven('width')
      ? side('width', widthMeters)
      : byArea((area) => (givenSide ? `${area}/${l}` : `SQRT(${area}/${on.shape})`)),
    isGiven('length') ? side('length', lengthMeters) : long,
    formula(`=2*(${w}+${l})`, lengthFormat(on.units)),
  ];
}

/** What is made of the area of a paddock, in square feet or metres. */
function formulaOfArea(
  squareMeters: number,
  paddock: string,
  name: string,
  on: LayoutOn,
  made: (area: string) => string,
): BlockCell {
  const lookup = listLookup(on.list, 'area', paddock, name, on.units, false);
  // Square feet in an acre and square metres in a hectare, exactly.
  const squares = on.units === 'US' ? 43560 : 10000;
  const sides = fromInside(squareMeters, 'area', on.units);
  const area = lookup ?? `${Math.round(sides * 1e6)}/10^6`;
  const side = made(`${area}*${squares}`);
  return formula(lookup === undefined ? `=${side}` : ifFilled(lookup, side), lengthFormat(on.units));
}

/** The side two paddocks share: the shorter of the two that touch. */
function sharedFormula(list: ListLayout, side: SharedSide, first: number, draft: Draft): string {
  const column = list.touching === 'lengths' ? AT.length : AT.width;
  return `MIN(${draft.at(first + side.earlier, column)};${draft.at(first + side.later, column)})`;
}
