/** Where the columns of a block come to stand: those of the grower's stay between ours, and none moves. */

import type { Columns } from '../../block/align-columns';
import { BLANK } from '../../block/cells';
import type { ComposedBlock } from '../../block/composed-block';
import type { BlockCell, BlockRule, BlockStyle } from '../../contract';
import { moveColumns } from '../../table/shift-formula';

/** A column of ours, by its place in the composed block, or one of the grower's, by where it stands. */
export type Slot = { readonly ours: number } | { readonly own: number };

/**
 * The columns from left to right as they stand; those of ours that were deleted come at the right end, so that formulas
 * elsewhere still point at the right ones. One that the old block never had, `isNew`, stands right of the one left of it.
 * `inOrder`: the block was not known column by column, and ours come first.
 */
export function slotsOf(
  columns: Columns,
  width: number,
  isOwn: (column: number) => boolean,
  isNew: (column: number) => boolean,
  inOrder: boolean,
): readonly Slot[] {
  const standing = columns.flatMap((written, own): Slot[] => {
    if (written === undefined) return isOwn(own) ? [{ own }] : [];
    return written < width && !inOrder ? [{ ours: written }] : [];
  });
  const there = new Set(standing.flatMap((slot) => ('ours' in slot ? slot.ours : [])));
  const missing = Array.from({ length: width }, (_, ours) => ({ ours })).filter(
    ({ ours }) => !there.has(ours),
  );
  if (inOrder) return [...missing, ...standing];
  const slots = [...standing, ...missing.filter(({ ours }) => !isNew(ours))];
  for (const slot of missing.filter(({ ours }) => isNew(ours)))
    slots.splice(slots.findIndex((one) => 'ours' in one && one.ours === slot.ours - 1) + 1, 0, slot);
  return slots;
}

/** The block with its columns in those places, the grower's still blank. Formulas of `kept` cells stay as they are. */
export function placeColumns(
  block: ComposedBlock,
  slots: readonly Slot[],
  left: number,
  kept: ReadonlySet<BlockCell>,
): Pick<ComposedBlock, 'rules' | 'widths'> & { cells: BlockCell[][]; styles: BlockStyle[][] } {
  const { cells, styles, rules, widths } = block;
  const placeOf = (column: number): number =>
    slots.findIndex((slot) => 'ours' in slot && slot.ours === column);
  const isInOrder = slots.every((slot, at) => 'ours' in slot && slot.ours === at);
  if (isInOrder)
    return { rules, widths, cells: cells.map((row) => [...row]), styles: styles.map((row) => [...row]) };
  const letters = (column: number): number => {
    const place = placeOf(column - left);
    return place < 0 ? column : left + place;
  };
  const moved = (cell: BlockCell): BlockCell =>
    cell.k === 'f' && !kept.has(cell) ? { ...cell, v: moveColumns(cell.v, letters) } : cell;
  const across = <Value>(row: readonly Value[], none: Value): Value[] =>
    slots.map((slot) => ('ours' in slot ? (row[slot.ours] ?? none) : none));
  return {
    cells: cells.map((row) => across(row.map(moved), BLANK)),
    styles: styles.map((row) => across(row, row[0] === 'heading' ? 'heading' : 'plain')),
    widths: across(widths, 0),
    rules: rules.map((rule): BlockRule => {
      const column = placeOf(rule.column);
      const last = placeOf(rule.column + rule.columns - 1);
      return {
        ...rule,
        column: Math.min(column, last),
        columns: Math.abs(last - column) + 1,
        formula: moveColumns(rule.formula, letters),
      };
    }),
  };
}
