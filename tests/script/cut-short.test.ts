/**
 * Every call to the service fails in turn, in six ways, while a block is written: the sheet then holds the old table
 * or the new one, the sentence is true, and the next press ends with the new table and everything that was typed.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { number, text } from '../../shared/block/cells';
import type { ComposedBlock } from '../../shared/block/composed-block';
import { fileFingerprint } from '../../shared/block/file-fingerprint';
import { type BlockContent, cut, cutBlock, wholeOf } from '../../shared/block/read-block';
import { allBlocks } from '../../shared/block/stamped-blocks';
import type {
  BlockCell,
  BlockInfo,
  TabContent,
  WholeFile,
  WireCell,
  WriteBlock,
} from '../../shared/contract';
import { blockFingerprint } from '../../shared/table/block-fingerprint';
import { asWritten } from '../../shared/tasks/merge/as-written';
import { mergeBlock } from '../../shared/tasks/merge/merge-block';
import { rebuildBlock } from '../../shared/tasks/merge/rebuild-block';
import { openWorkbook, type Workbook } from '../../src/headless';

const codeJs = readFileSync('dist/Code.js', 'utf8');
const NAME = 'SOUNDER_TEST';
const NOTE = 'mine, beside the table';

/** A heading, and rows with a figure and a cell to type into. */
function table(rows: number, columns: number): ComposedBlock {
  const across = Array.from({ length: columns }, (_, c) => c);
  const cells = Array.from({ length: rows }, (_, r): BlockCell[] =>
    across.map((c) => (c === 0 ? text(`row ${r}`) : c === 1 ? number(100 * rows + r) : { k: 'blank' })),
  );
  const styles = cells.map(() => across.map((c) => (c === 2 ? ('input' as const) : ('plain' as const))));
  return { cells, styles, rules: [], widths: across.map(() => 90) };
}

interface Case {
  readonly old?: ComposedBlock;
  readonly next: ComposedBlock;
}

const CASES: Readonly<Record<string, Case>> = {
  'a first table': { next: table(5, 3) },
  'a table that grows': { old: table(4, 3), next: table(7, 4) },
  'a table that shrinks': { old: table(7, 4), next: table(4, 3) },
  'fewer rows, more columns': { old: table(7, 3), next: table(4, 4) },
};
const WAYS = [
  { after: false, forGood: false },
  { after: true, forGood: false },
  { after: false, forGood: true },
  { after: true, forGood: true },
  // Writes are queued and refused at the next reading or flush, or dropped without a word.
  { after: false, forGood: false, lateRefusals: 'told' },
  { after: false, forGood: false, lateRefusals: 'lost' },
] as const;
/** What a sentence claims of the table: every one does. */
const UNSEEN = /could not be seen/;
const CLAIM = /could not be seen|Nothing was written\.$|No table was written\.$|left as it was\.$/;

function read(book: Workbook): WholeFile {
  const reply = book.ask('readFile', {});
  if (!reply.ok) throw new Error(reply.error);
  return reply.data as WholeFile;
}

interface Found {
  readonly tab: TabContent;
  readonly block: BlockContent;
  readonly file: string;
}

function standing(book: Workbook): Found | undefined {
  const { overview, tabs } = read(book);
  const named = allBlocks(overview.blocks, tabs).find(({ name }) => name === NAME);
  const tab = tabs.find(({ name }) => name === named?.tab);
  const file = fileFingerprint(overview.today, tabs);
  return named && tab ? { tab, block: cutBlock(tab, named), file } : undefined;
}

/** What the page asks for: over the table that stands, or a first one. */
function requestFor(book: Workbook, next: ComposedBlock): WriteBlock {
  const found = standing(book);
  return found?.block.values.flat().some((value) => value !== '') ? over(found, next) : first(book, next);
}

function press(book: Workbook, next: ComposedBlock): Pressed {
  return sent(book, requestFor(book, next));
}

interface Pressed {
  readonly ok: boolean;
  readonly error?: string;
  readonly note: string;
}

function sent(book: Workbook, request: WriteBlock): Pressed {
  const reply = book.ask('writeBlock', request);
  return reply.ok
    ? { ok: true, note: (reply.data as { note: string }).note }
    : { ok: false, error: reply.error, note: '' };
}

function first(book: Workbook, next: ComposedBlock): WriteBlock {
  const { kept: _, ids: __, ...block } = mergeBlock(NAME, next);
  const { overview, tabs } = read(book);
  const used = new Set(overview.tabs.filter(({ rows }) => rows > 0).map(({ name }) => name));
  const tab = ['Plan', 'Plan 2'].find((name) => !used.has(name))!;
  const file = fileFingerprint(overview.today, tabs);
  return { name: NAME, ...block, freezeRows: 0, place: { at: 'new-tab', tab }, file };
}

function over({ tab, block: old, file }: Found, next: ComposedBlock): WriteBlock {
  // The grower's own cells are read and written back, as every task does.
  const compose = (_: BlockInfo, reading: BlockContent): ComposedBlock => ({
    ...next,
    cells: next.cells.map((row, r) =>
      row.map((cell, c) => (c === 2 && reading.values[r]?.[2] ? text(String(reading.values[r]?.[2])) : cell)),
    ),
  });
  const { kept: _, ids: __, ...block } = rebuildBlock(NAME, old, compose);
  const area = wholeOf(old);
  const { values, formulas } = cut(tab, area);
  return {
    name: NAME,
    ...block,
    freezeRows: 0,
    place: { at: 'own', area },
    expects: blockFingerprint(values, formulas),
    file,
  };
}

/** What the readers see of the table: without memory and without what a write that was cut short has left. */
function seen(book: Workbook): readonly (readonly WireCell[])[] | undefined {
  const found = standing(book);
  return found && asWritten(found.block, new Map()).values.filter((row) => row.some((value) => value !== ''));
}

function wanted({ cells }: ComposedBlock, typed: string): readonly (readonly WireCell[])[] {
  return cells.map((row, r) =>
    row.map((cell, c) => (r === 1 && c === 2 ? typed : 'v' in cell ? (cell.v as WireCell) : '')),
  );
}

describe('a write that is cut short at any call', () => {
  for (const [what, { old, next }] of Object.entries(CASES)) {
    it(what, async () => {
      let tried = 0;
      const prepared = await openWorkbook({ codeJs, tabs: { Notes: [['Field book', 12]] } });
      if (old) {
        expect(press(prepared, old)).toEqual({ ok: true, note: '' });
        prepared.type('Plan', 'C2', 'typed');
        prepared.type('Plan', 'H9', NOTE);
      }
      for (const how of WAYS) {
        for (let index = 0; ; index++) {
          const book = await prepared.copy();
          if ('lateRefusals' in how) book.state.modes.lateRefusals = how.lateRefusals;
          const typed = old ? 'typed' : '';
          const request = requestFor(book, next);
          book.resetCounts();
          book.failOn(index, 'Service Spreadsheets failed while accessing document.', how);
          const reply = sent(book, request);
          const isOver = book.callTotal <= index;
          book.clearFailures();
          book.state.modes.lateRefusals = 'no';
          const where = `${what}, call ${index}, ${JSON.stringify(how)}: ${JSON.stringify(reply)}`;
          const now = seen(book) ?? [];
          const isNew = JSON.stringify(now) === JSON.stringify(wanted(next, typed));
          const isOld = JSON.stringify(now) === JSON.stringify(old ? wanted(old, typed) : []);
          expect(isNew || isOld, `${where}\n${JSON.stringify(now)}`).toBe(true);
          if (reply.ok) expect(isNew, where).toBe(true);
          else if (UNSEEN.test(reply.error ?? '')) expect(how.forGood, where).toBe(true);
          else expect(isOld, where).toBe(true);
          if (!reply.ok) expect(reply.error, where).toMatch(CLAIM);
          expect(reply.error ?? '', where).not.toContain('..');
          const again = press(book, next);
          expect(again, where).toEqual({ ok: true, note: '' });
          expect(seen(book), where).toEqual(wanted(next, typed));
          const plan = book.values('Plan').map((row) => row.slice(0, next.cells[0]!.length));
          if (old) {
            const rest = plan.slice(next.cells.length, 8).flat();
            expect(
              rest.filter((value) => value !== ''),
              where,
            ).toEqual([]);
            expect(book.value('Plan', 'H9'), where).toBe(NOTE);
          }
          expect(book.value('Notes', 'B1')).toBe(12);
          tried++;
          if (isOver) break;
        }
      }
      console.log(`cut short: ${what}, ${tried} failing calls tried, none lost, none told wrongly`);
      expect(tried).toBeGreaterThan(40);
    }, 600_000);
  }
});
