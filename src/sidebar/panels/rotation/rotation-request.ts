/** What the script is asked to write: the rotation table with its memory. */
import { ROTATION_NAME } from '../../../../shared/block/own-words';
import type { BlockCell, WriteBlock } from '../../../../shared/contract';
import type { Corner, RotationBlockInput } from '../../../../shared/table/model';
import { rotationBlock } from '../../../../shared/table/rotation-block';
import { withMemory } from '../../../../shared/tasks/merge-block';
import type { OldTable } from './old-table';

export function rotationRequest(
  input: Omit<RotationBlockInput, 'corner'>,
  corner: Corner,
  at: { readonly old: OldTable } | { readonly place: WriteBlock['place'] },
): WriteBlock {
  const old = 'old' in at ? at.old : undefined;
  const block = withMemory(ROTATION_NAME, rotationBlock({ ...input, corner }), old?.memory?.stamp);
  if ('place' in at) return { name: ROTATION_NAME, ...block, place: at.place };
  const { memory, area, info, fingerprint, rotation } = at.old;
  // Looks are taken from the sheet, where the memory stands among the columns.
  const beyond = memory ? memory.column - info.column : Number.POSITIVE_INFINITY;
  const moved = (cell: BlockCell): BlockCell =>
    cell.from && cell.from[1] >= beyond ? { ...cell, from: [cell.from[0], cell.from[1] + 1] } : cell;
  return {
    name: ROTATION_NAME,
    ...block,
    cells: block.cells.map((row) => row.map(moved)),
    place: {
      at: 'own',
      area,
      ...(memory && { memoryColumn: memory.column }),
      ...(rotation.own && { frozenRows: info.row + rotation.own.headRows }),
    },
    expects: fingerprint,
  };
}
