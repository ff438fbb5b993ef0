import { dateWords } from '../block/date-words';
import type { WireCell } from '../contract';
import { plainNumber } from '../refusals';
import type { ExtraColumn, KeptCell, OldRow } from './model';
import { moveName } from './move-name';

/**
 * What was typed into moves that the new table does not have, as lines that stay in sight: nothing typed is
 * ever lost.
 */
export function keptLinesOf(lost: readonly OldRow[], extraColumns: readonly ExtraColumn[] = []): string[] {
  return lost.flatMap((row) => {
    const typed = [
      ...said('cover left', asPercent(row.cover)),
      ...said('note', row.note),
      ...row.typedOver.flatMap(({ stays, words }) => (stays ? [words] : [])),
      ...row.extras.flatMap((cell, i) =>
        cell.formula === '' ? said(extraColumns[i]?.heading || 'added column', cell) : [],
      ),
    ];
    if (typed.length === 0) return [];
    return [`${moveName(row)}: ${typed.join('; ')}`];
  });
}

/** The column shows a share of one as a percentage. */
function asPercent(cell: KeptCell): KeptCell {
  const { value } = cell;
  return typeof value === 'number' ? { ...cell, value: `${plainNumber(value * 100)} %` } : cell;
}

function said(label: string, { value }: KeptCell): string[] {
  const words = cellWords(value);
  return words === '' ? [] : [`${label} ${words}`];
}

/** A cell's value as text. */
export function cellWords(value: WireCell): string {
  if (typeof value === 'object') return dateWords(value.d);
  if (typeof value === 'number') return plainNumber(value);
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return value.trim();
}
