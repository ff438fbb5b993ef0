/** Writes a composed block through the built script into the preview's engine, and looks cells up by labels. */
import { type BlockContent, cutBlock } from '../../shared/block/read-block';
import type { BlockInfo, TabContent, WriteBlock } from '../../shared/contract';
import { blockFingerprint } from '../../shared/table/block-fingerprint';
import type { ComposedBlock } from '../../shared/tasks/composed-block';
import type { Workbook } from '../../src/preview/headless';

export function writeInSheet(
  book: Workbook,
  name: string,
  block: ComposedBlock,
  place: WriteBlock['place'],
  expects?: string,
): BlockInfo {
  const request: WriteBlock = { ...block, name, place, freezeRows: 0, ...(expects && { expects }) };
  const reply = book.ask('writeBlock', request);
  if (!reply.ok) throw new Error(reply.error);
  return (reply.data as { block: BlockInfo }).block;
}

export function readFromSheet(book: Workbook, info: BlockInfo): BlockContent & { expects: string } {
  const reply = book.ask('readTabs', { tabs: [info.tab] });
  if (!reply.ok) throw new Error(reply.error);
  const content = cutBlock((reply.data as TabContent[])[0]!, info);
  return { ...content, expects: blockFingerprint(content.values, content.formulas) };
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
