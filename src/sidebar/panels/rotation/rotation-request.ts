/** What the script is asked to write: the rotation table, merged with the one that stands. */

import { markOfStanding, type RowMemory } from '../../../../shared/block/memory';
import { ROTATION_NAME } from '../../../../shared/block/own-words';
import type { BlockContent } from '../../../../shared/block/read-block';
import type { BlockCell, WriteBlock } from '../../../../shared/contract';
import { COLUMNS } from '../../../../shared/table/columns';
import type { Corner, RotationBlockInput } from '../../../../shared/table/model';
import { columnsOf } from '../../../../shared/table/move-rows';
import { rotationBlock } from '../../../../shared/table/rotation-block';
import { type MergedBlock, mergeBlock } from '../../../../shared/tasks/merge-block';
import type { OldTable } from '../../../../shared/tasks/rotation/old-table';

type Input = Omit<RotationBlockInput, 'corner'>;

export function rotationRequest(
  input: Input,
  corner: Corner,
  at: { readonly old: OldTable; readonly putBack?: boolean } | { readonly place: WriteBlock['place'] },
): WriteBlock {
  const first = rotationBlock({ ...input, corner });
  const kind = { name: ROTATION_NAME, freezeRows: first.freezeRows };
  if ('place' in at) return { ...kind, ...sent(mergeBlock(ROTATION_NAME, first)), place: at.place };
  const { memoryColumn, area, info, fingerprint, rotation } = at.old;
  const block = sent(mergedRotation(input, at.old, at.putBack));
  // Looks are taken from the sheet, where the memory stands among the columns.
  const beyond = memoryColumn === undefined ? Number.POSITIVE_INFINITY : memoryColumn - info.column;
  const moved = (cell: BlockCell): BlockCell =>
    cell.from && cell.from[1] >= beyond ? { ...cell, from: [cell.from[0], cell.from[1] + 1] } : cell;
  return {
    ...kind,
    ...block,
    cells: block.cells.map((row) => row.map(moved)),
    place: {
      at: 'own',
      area,
      ...(memoryColumn !== undefined && { memoryColumn }),
      ...(rotation.headRows !== undefined && { frozenRows: info.row + rotation.headRows }),
    },
    expects: fingerprint,
  };
}

/** The new table over the one that stands, with what the grower typed there. */
export function mergedRotation(input: Input, { block, info }: OldTable, putBack = false): MergedBlock {
  const { tab, row, column } = info;
  const want = rotationBlock({ ...input, corner: { tab, row, column } });
  return mergeBlock(ROTATION_NAME, want, daysSettled(block, input.past ?? []), putBack);
}

/** Days of a past move that are set to what they were: what was typed there gives way, as the page says. */
function daysSettled(block: BlockContent, past: NonNullable<RotationBlockInput['past']>): BlockContent {
  const set = new Set(past.flatMap(({ id, daysBefore }) => (daysBefore === undefined ? [] : [id])));
  const { memory, values, formulas } = block;
  if (!memory || set.size === 0) return block;
  const column = columnsOf(block).get('days') ?? -1;
  const days = COLUMNS.findIndex(({ key }) => key === 'days');
  const rows = memory.rows.map((row, r): RowMemory | undefined => {
    const mark = `+${markOfStanding(values[r]?.[column] ?? '', formulas[r]?.[column] ?? '')}`;
    return row && set.has(row.id)
      ? { ...row, marks: row.marks.map((one, w) => (w === days ? mark : one)) }
      : row;
  });
  return { ...block, memory: { ...memory, rows } };
}

function sent({ cells, styles, rules, widths }: MergedBlock) {
  return { cells, styles, rules, widths };
}
