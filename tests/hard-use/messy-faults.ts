/** Mistakes as they stand in real lists: each spoils one cell, and the refusal has to name that cell. */
import type { StartCell } from '../../src/headless';

export interface Fault {
  readonly list: 'paddocks' | 'groups';
  /** Key of the column whose cell is spoilt and named. */
  readonly column: string;
  /** Position of the item; the first ones where the list is shorter. */
  readonly item: number;
  readonly cell: StartCell;
}

const ERRORS: readonly StartCell[] = ['=1/0', '=NA()', '=NOT_A_FUNCTION(1)', '=#REF!+1'];
const NO_NUMBER: readonly StartCell[] = [
  ...ERRORS,
  { text: 'about half' },
  { text: 'n/a' },
  true,
  { text: '1 2' },
];
const EARLY = { text: 'early May' };
/** Words that mean no day are told in some columns, not refused: tests/lists. */
const NO_DAY: readonly StartCell[] = [...ERRORS, { text: '2026-02-30' }, { text: '2026-13-01' }, 12.5];
const NO_DATE: readonly StartCell[] = [...NO_DAY, EARLY, 'yes'];
const of = (list: Fault['list'], column: string, cells: readonly StartCell[]) =>
  cells.map((cell) => ({ list, column, cell }));

export const FAULTS: readonly Omit<Fault, 'item'>[] = [
  // A name with nothing beside it is told as a note and left out: tests/lists.
  ...of('paddocks', 'area', [...NO_NUMBER, 0, -2, { text: '-2' }, { text: '3 lb' }]),
  ...of('paddocks', 'paddock', ['=NA()', '=1/0', '']),
  ...of('paddocks', 'lastUsed', NO_DATE),
  ...of('paddocks', 'openFrom', [...NO_DAY, EARLY]),
  ...of('paddocks', 'openUntil', [...NO_DAY, EARLY]),
  ...of('paddocks', 'rest', [...NO_NUMBER, -1]),
  ...of('paddocks', 'adjoining', ['=NA()', { text: 'nowhere at all' }, true]),
  ...of('groups', 'head', [...NO_NUMBER, '', -3, 2.5, { text: 'ten' }]),
  ...of('groups', 'weight', [...NO_NUMBER, '', 0, -60]),
  // A blank day of weighing counts as today, and is told.
  ...of('groups', 'weighedOn', NO_DAY),
  ...of('groups', 'gain', [...NO_NUMBER, -1]),
  ...of('groups', 'group', ['=NA()', '']),
  ...of('groups', 'from', NO_DATE),
];
