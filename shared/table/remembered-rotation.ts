import { idOf, isRecordId, SETTING_ROW } from '../block/compose-block';
import {
  ANSWER_MARK,
  BLANK_MARK,
  headingMark,
  markIn,
  markOfStanding,
  type RowMemory,
} from '../block/memory';
import { oncePer } from '../block/once-per';
import { TITLES } from '../block/own-words';
import type { BlockContent } from '../block/read-block';
import type { WireCell } from '../contract';
import type { Day } from '../core/calendar/day';
import { COLUMNS, type ColumnKey, columnOfHeading } from './columns';
import { SPILLED } from './function-cells';
import { headRowName, WARNING } from './head-rows';
import { ANCHOR, columnsOf, HEADINGS, keysOf, moveId, rowNamed, rowsOfMoves } from './move-rows';
import { cellWords, ownDay } from './own-cell';
import { SETTINGS_TITLE, settingOfLabel } from './settings-rows';
import { TYPE_DAY } from './words';

/**
 * The rotation block with an id for each move. One that the grower added has none yet: nothing was written there. A
 * table of an earlier version, or one whose memory was deleted, is known by its headings.
 */
export const rememberedRotation = oncePer((block: BlockContent): BlockContent => {
  const known = rowNamed(block, HEADINGS) >= 0 || rowNamed(block, ANCHOR) >= 0 ? block : byHeadings(block);
  return known.memory ? withNewMoves(known) : known;
});

/** A move has a group, a paddock and anything that says when. */
export function isMove(cell: (key: ColumnKey) => WireCell): boolean {
  const isFilled = (key: ColumnKey): boolean => cellWords(cell(key)) !== '';
  return isFilled('group') && isFilled('paddock') && WHEN.some(isFilled);
}

const WHEN: readonly ColumnKey[] = ['plannedIn', 'movedIn', 'days'];

function withNewMoves(block: BlockContent): BlockContent {
  const memory = block.memory!;
  const columns = columnsOf(block);
  const taken = new Set(memory.rows.flatMap((row) => row?.id ?? []));
  const known = new Set(memory.rows.flatMap((row) => row?.marks ?? []));
  const rows = [...memory.rows];
  for (const r of rowsOfMoves(block)) {
    const cell = (key: ColumnKey): WireCell => block.values[r]?.[columns.get(key) ?? -1] ?? '';
    if (isRecordId(rows[r]?.id) || !isMove(cell)) continue;
    const inDay = ownDay(cell('movedIn')) ?? ownDay(cell('plannedIn')) ?? 0;
    const id = moveId({ group: cellWords(cell('group')), paddock: cellWords(cell('paddock')), inDay }, taken);
    // A formula of ours came in with a row that was copied.
    const marks = keysOf(block).map((key) => {
      const formula = block.formulas[r]?.[(key && columns.get(key)) ?? -1] ?? '';
      const mark = markOfStanding('', formula);
      return formula !== '' && known.has(mark) ? mark : BLANK_MARK;
    });
    rows[r] = { stamp: memory.stamp, id, marks };
  }
  return rows.every((row, r) => row === memory.rows[r]) ? block : { ...block, memory: { ...memory, rows } };
}

const REQUIRED: readonly ColumnKey[] = ['group', 'paddock', 'plannedIn', 'movedIn', 'days'];
/** What the builder always writes as values; other values in columns of ours count as typed. */
const WRITTEN: readonly ColumnKey[] = ['group', 'paddock', 'plannedIn', 'days'];

/**
 * A memory for a table without one. Formulas in columns of ours count as written, values as typed, so that none is
 * lost: what is not the same as will be written stays and is told.
 */
function byHeadings(block: BlockContent): BlockContent {
  const { values, formulas } = block;
  const keyOf = (cell: WireCell): ColumnKey | undefined =>
    typeof cell === 'string' ? columnOfHeading(cell) : undefined;
  const headings = values.findIndex((row) =>
    REQUIRED.every((key) => row.some((cell) => keyOf(cell) === key)),
  );
  if (headings < 0) {
    const { memory: _, ...unknown } = block;
    return unknown;
  }
  const places = COLUMNS.map(({ key }) => values[headings]!.findIndex((cell) => keyOf(cell) === key));
  const title = values.findIndex((row) => row.includes(SETTINGS_TITLE));
  const taken = new Set<string>();
  const row = (id: string, r: number, isWritten: (c: number, w: number) => boolean): RowMemory => ({
    stamp: '',
    id,
    marks: places.map((c, w) => (c >= 0 && isWritten(c, w) ? markIn(block, r, c) : BLANK_MARK)),
  });
  const isFormula = (r: number, c: number): boolean => formulas[r]?.[c] !== '';
  const isOwnHead = (r: number, c: number): boolean => {
    const words = cellWords(values[r]?.[c] ?? '');
    if (r === 0) return words.startsWith(TITLES.rotation);
    return (r === 1 && c === 0) || words === TYPE_DAY || words.startsWith(WARNING);
  };
  const head = ({ marks, ...row }: RowMemory): RowMemory => ({ ...row, marks: marks.map(headingMark) });
  const rowAt = (r: number): RowMemory | undefined => {
    if (r < headings) return row(idOf(headRowName(r)), r, (c) => isOwnHead(r, c));
    if (r === headings) return head(row(idOf(HEADINGS), r, () => true));
    if (r === headings + 1) return row(idOf(ANCHOR), r, (c) => isFormula(r, c));
    if (r === title) return head(row(idOf(SETTINGS_TITLE), r, (c) => c === 0));
    if (title >= 0 && r > title) {
      const key = settingOfLabel(values[r]?.[0] ?? '');
      const memory = key && row(idOf(SETTING_ROW + key), r, () => true);
      return memory && { ...memory, marks: memory.marks.map((mark, w) => (w === 0 ? mark : `+${mark}`)) };
    }
    const cell = (key: ColumnKey): WireCell =>
      values[r]?.[places[COLUMNS.findIndex((one) => one.key === key)]!] ?? '';
    if (!isMove(cell)) return undefined;
    const inDay: Day = ownDay(cell('plannedIn')) ?? ownDay(cell('movedIn')) ?? 0;
    const id = moveId({ group: cellWords(cell('group')), paddock: cellWords(cell('paddock')), inDay }, taken);
    const memory = row(id, r, (c, w) => isFormula(r, c) || WRITTEN.includes(COLUMNS[w]!.key));
    const marks = memory.marks.map((mark, w) => {
      const { key, style } = COLUMNS[w]!;
      if (SPILLED.includes(key)) return ANSWER_MARK;
      return style === 'input' ? `+${mark}` : mark;
    });
    return { ...memory, marks };
  };
  return { ...block, memory: { kind: 'ROTATION', stamp: '', rows: values.map((_, r) => rowAt(r)) } };
}
