/** Writes a composed block through the built script into the preview's engine, as the page does, and looks cells up. */

import type { ComposedBlock } from '../../shared/block/composed-block';
import { type BlockContent, cut, cutBlock, wholeOf } from '../../shared/block/read-block';
import type { BlockInfo, TabContent, WriteBlock } from '../../shared/contract';
import { blockFingerprint } from '../../shared/table/block-fingerprint';
import { asWritten } from '../../shared/tasks/merge/as-written';
import { type MergedBlock, mergeBlock } from '../../shared/tasks/merge/merge-block';
import { OUR_WORDS } from '../../shared/tasks/merge/our-words';
import { rebuildBlock } from '../../shared/tasks/merge/rebuild-block';
import type { Workbook } from '../../src/headless';

/** Of a rebuild before which nothing of ours was typed over, and everything typed has its place. */
export const NOTHING_KEPT: MergedBlock['kept'] = { inPlace: [], below: [] };

/** A first write. */
export function writeInSheet(
  book: Workbook,
  name: string,
  block: ComposedBlock,
  place: Exclude<WriteBlock['place'], { at: 'own' }>,
): BlockInfo {
  return send(book, name, mergeBlock(name, block), place);
}

/** Writes the merge over the block that stands, `old`. */
export function writeOver(book: Workbook, name: string, old: BlockContent, block: MergedBlock): BlockInfo {
  const area = wholeOf(old);
  const { values, formulas } = cut(readTab(book, old.info.tab), area);
  const place = { at: 'own', area } as const;
  return send(book, name, block, place, blockFingerprint(values, formulas));
}

/** Composes over what stands now and writes that. */
export function writeAnew(
  book: Workbook,
  name: string,
  info: BlockInfo,
  compose: Parameters<typeof rebuildBlock>[2],
): { readonly info: BlockInfo; readonly kept: MergedBlock['kept'] } {
  const old = readFromSheet(book, info);
  const block = rebuildBlock(name, old, compose);
  return { info: writeOver(book, name, old, block), kept: block.kept };
}

function send(
  book: Workbook,
  name: string,
  { cells, styles, rules, widths }: MergedBlock,
  place: WriteBlock['place'],
  expects?: string,
): BlockInfo {
  const request = { name, place, cells, styles, rules, widths, freezeRows: 0 };
  const reply = book.ask('writeBlock', { ...request, ...(expects !== undefined && { expects }) });
  if (!reply.ok) throw new Error(reply.error);
  return (reply.data as { block: BlockInfo }).block;
}

export function readTab(book: Workbook, tab: string): TabContent {
  const reply = book.ask('readTabs', { tabs: [tab] });
  if (!reply.ok) throw new Error(reply.error);
  return (reply.data as TabContent[])[0]!;
}

/** The block as it stands, without its memory column. */
export function readFromSheet(book: Workbook, info: BlockInfo, rowsBelow = 0): BlockContent {
  return cutBlock(readTab(book, info.tab), info, rowsBelow);
}

/** The block as its readers get it. */
export function readAsWritten(book: Workbook, info: BlockInfo, rowsBelow = 0): BlockContent {
  return asWritten(readFromSheet(book, info, rowsBelow), OUR_WORDS);
}

/** Value beside a label in the first column of a block, by columns to the right of it. */
export function beside(content: BlockContent, label: string, column = 1): unknown {
  return content.values.find((row) => row[0] === label)?.[column];
}

/** A1 reference of the cell beside a label in the block's first column. */
export function cellBeside(content: BlockContent, label: string, column = 1): string {
  const at = content.values.findIndex((row) => row[0] === label);
  if (at < 0) throw new Error(`no "${label}" in the block`);
  return `${String.fromCharCode(64 + content.info.column + column)}${content.info.row + at}`;
}

/** Cells that show an error, with what they show. */
export function errorsIn(content: BlockContent): unknown[] {
  return content.values.flat().filter((value) => typeof value === 'string' && /^#[A-Z]/.test(value));
}
