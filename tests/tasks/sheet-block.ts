/** Writes a composed block through the built script into the preview's engine, and looks cells up by labels. */
import { type BlockContent, cut, cutBlock, wholeOf } from '../../shared/block/read-block';
import type { BlockInfo, Overview, TabContent, WriteBlock } from '../../shared/contract';
import { blockFingerprint } from '../../shared/table/block-fingerprint';
import type { ComposedBlock } from '../../shared/tasks/composed-block';
import { type MergedBlock, mergeBlock } from '../../shared/tasks/merge-block';
import type { Workbook } from '../../src/preview/headless';

/** As the page writes: with its memory, and merged with what stands where it goes over a table of ours. */
export function writeInSheet(
  book: Workbook,
  name: string,
  block: ComposedBlock | MergedBlock,
  place: { readonly at: 'own'; readonly adoptRows?: number } | WriteBlock['place'],
  expects?: string,
): BlockInfo {
  const old =
    place.at === 'own' ? standing(book, name, 'adoptRows' in place ? place.adoptRows : 0) : undefined;
  const merged = 'stamp' in block ? block : mergeBlock(name, block, old);
  const { cells, styles, rules, widths, stamp } = merged;
  const request: WriteBlock = {
    name,
    cells,
    styles,
    rules,
    widths,
    stamp,
    freezeRows: 0,
    place: old ? { at: 'own', area: wholeOf(old) } : (place as WriteBlock['place']),
    ...(old && { expects: expects ?? old.expects }),
  };
  const reply = book.ask('writeBlock', request);
  if (!reply.ok) throw new Error(reply.error);
  return (reply.data as { block: BlockInfo }).block;
}

function standing(book: Workbook, name: string, adoptRows = 0): Standing {
  const reply = book.ask('overview', {});
  if (!reply.ok) throw new Error(reply.error);
  const named = (reply.data as Overview).blocks.find((block) => block.name === name)!;
  return readFromSheet(book, named, adoptRows);
}

type Standing = BlockContent & { readonly expects: string };

export function readFromSheet(book: Workbook, info: BlockInfo, adoptRows = 0): Standing {
  const reply = book.ask('readTabs', { tabs: [info.tab] });
  if (!reply.ok) throw new Error(reply.error);
  const tab = (reply.data as TabContent[])[0]!;
  const content = cutBlock(tab, info, adoptRows);
  const whole = cut(tab, wholeOf(content));
  return { ...content, expects: blockFingerprint(whole.values, whole.formulas) };
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
