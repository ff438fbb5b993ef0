import { expect } from 'vitest';
import { standingRotation } from '../../shared/tasks/rotation/rotation-standing';
import { openWorkbook, type StartCell, type Workbook } from '../../src/headless';
import { scriptText } from '../tasks/script-text';
import { type ShownMove, shownMoves } from './check-table';
import { buildRotation, readBook } from './rotation-task';

/** A farm on one tab, with its table written on 1 April 2026, and the moves as it shows them at each look. */
export async function writtenFarm(
  Farm: StartCell[][],
): Promise<{ book: Workbook; moves: () => ShownMove[] }> {
  const book = await openWorkbook({ tabs: { Farm }, codeJs: await scriptText(), today: '2026-04-01' });
  expect(await buildRotation(book)).toMatchObject({ kind: 'written' });
  return { book, moves: () => shownMoves(book, standingRotation(readBook(book))!.block.info) };
}
