/** A small stand-in for the script's side of the sidebar, answering with the fixture it is given. */
import * as v from 'valibot';
import { fileFingerprint } from '../../shared/block/file-fingerprint';
import {
  type BlockInfo,
  CALLS,
  type CallName,
  type ClearInCopy,
  type FileChanged,
  type Overview,
  type Request,
  type Selection,
  type TabContent,
  type WholeFile,
  type WireCell,
  type WriteBlock,
  type WriteDone,
} from '../../shared/contract';
import { blockFingerprint } from '../../shared/table/block-fingerprint';

/** What a call ends in instead of an answer. */
export type Trouble =
  | { readonly kind: 'refused'; readonly sentence: string }
  | { readonly kind: 'thrown'; readonly message: string }
  | { readonly kind: 'silent' }
  | { readonly kind: 'text'; readonly text: string | null };

export class FakeSheet {
  readonly asked: { readonly name: CallName; readonly request: unknown }[] = [];
  readonly written: WriteBlock[] = [];
  readonly formulas: string[] = [];
  readonly cleared: ClearInCopy[] = [];
  readonly drawings: Request<'showDrawing'>[] = [];
  /** What fileMark answers: the mark that this file would carry as an original. */
  mark = 'SOUNDER_ORIGINAL_ABCDEFGHIJKLMNOP';
  /** Trouble for the next call of a name. */
  readonly trouble = new Map<CallName, Trouble>();
  blocks: BlockInfo[] = [];
  /** Tabs without cells. */
  passedOver: string[] = [];
  selection: Selection = { tab: 'Notes', a1: 'B2', row: 2, column: 2, rows: 1, columns: 1, values: [['']] };
  locale = 'en_US';

  constructor(public tabs: TabContent[]) {}

  answer(name: CallName, text: string): { reply: string | null } | { error: string } | { silent: true } {
    const request = v.parse(CALLS[name].request, JSON.parse(text));
    this.asked.push({ name, request });
    const trouble = this.trouble.get(name);
    this.trouble.delete(name);
    if (trouble?.kind === 'silent') return { silent: true };
    if (trouble?.kind === 'thrown') return { error: trouble.message };
    if (trouble?.kind === 'text') return { reply: trouble.text };
    if (trouble) return { reply: JSON.stringify({ ok: false, error: trouble.sentence }) };
    try {
      const data = v.parse(CALLS[name].reply, this.act(name, request));
      return { reply: JSON.stringify({ ok: true, data }) };
    } catch (error) {
      return { reply: JSON.stringify({ ok: false, error: (error as Error).message }) };
    }
  }

  private act(name: CallName, request: unknown): unknown {
    switch (name) {
      case 'overview':
        return this.overview();
      case 'readFile':
        return this.whole();
      case 'readTabs':
        return this.tabs.filter((tab) => (request as { tabs: string[] }).tabs.includes(tab.name));
      case 'readSelection':
        return this.selection;
      case 'changeCells': {
        const { cells } = request as Request<'changeCells'>;
        this.formulas.push(...cells.flatMap(({ after }) => (after.k === 'f' ? [after.v] : [])));
        return { cells: cells.length };
      }
      case 'writeBlock':
        return this.write(request as WriteBlock);
      case 'fileMark':
        return { mark: this.mark, title: 'Farm' };
      case 'clearInCopy':
        this.cleared.push(request as ClearInCopy);
        for (const { tab } of (request as ClearInCopy).tables) {
          // Each of our tables has a tab of its own here.
          this.blocks = this.blocks.filter((block) => block.tab !== tab);
          this.tabs = this.tabs.map((one) => (one.name === tab ? { ...one, values: [], formulas: [] } : one));
        }
        return { cells: (request as ClearInCopy).areas.length };
      case 'showDrawing':
        this.drawings.push(request as Request<'showDrawing'>);
        return {};
      case 'showCell':
        return {};
      case 'startSample':
        return { tabs: this.tabs.map((tab) => tab.name) };
    }
  }

  private whole(): WholeFile {
    return { overview: this.overview(), tabs: this.tabs.filter(({ values }) => values.length > 0) };
  }

  private overview(): Overview & WholeFile['overview'] {
    return {
      locale: this.locale,
      today: '2026-04-20',
      tabs: this.tabs.map(({ name, values }) => ({
        name,
        rows: values.length,
        columns: values[0]?.length ?? 0,
      })),
      blocks: this.blocks,
      activeTab: this.selection.tab,
      timeZone: 'America/Chicago',
      passedOver: this.passedOver,
    };
  }

  /** Keeps what was written as typed values, and as a tab of its own, so that it can be read back. */
  private write(request: WriteBlock): WriteDone | FileChanged {
    const { overview, tabs } = this.whole();
    if (request.file !== undefined && request.file !== fileFingerprint(overview.today, tabs))
      return { changed: this.whole() };
    const old = this.blocks.find((block) => block.name === request.name);
    if (request.place.at === 'own') {
      if (!old) throw new Error('No table of ours was found.');
      const tab = this.tabs.find(({ name }) => name === old.tab);
      if (tab && request.expects !== blockFingerprint(tab.values, tab.formulas)) {
        throw new Error('Somebody changed the table after it was read here. Nothing was written.');
      }
    }
    this.written.push(request);
    const name = request.place.at === 'own' ? (old?.tab ?? '') : request.place.tab;
    const rows = request.cells.length;
    const columns = request.cells[0]?.length ?? 0;
    const block = { name: request.name, tab: name, row: 1, column: 1, rows, columns };
    this.blocks = [...this.blocks.filter(({ name }) => name !== request.name), block];
    const values = request.cells.map((row) => row.map((cell) => plain(cell)));
    const formulas = request.cells.map((row) => row.map((cell) => (cell.k === 'f' ? cell.v : '')));
    const tab = { name, values, formulas };
    this.tabs = [...this.tabs.filter((other) => other.name !== name), tab];
    return { block, a1: `A1:Z${rows}`, note: '', tab };
  }
}

/** There is no engine here: a formula that starts from a planned day shows that day, any other shows nothing. */
function plain(cell: WriteBlock['cells'][number][number]): WireCell {
  if (cell.k === 'd') return { d: cell.v };
  if (cell.k === 'f') {
    const day = /DATE\((\d+);(\d+);(\d+)\)/.exec(cell.v);
    return day
      ? {
          d: day
            .slice(1)
            .map((part) => part.padStart(2, '0'))
            .join('-'),
        }
      : '';
  }
  return cell.k === 'blank' ? '' : cell.v;
}

/** Rows of cells as the content of a tab without formulas. */
export function tab(name: string, rows: readonly (readonly WireCell[])[]): TabContent {
  const width = Math.max(1, ...rows.map((row) => row.length));
  const values = rows.map((row) => Array.from({ length: width }, (_, c) => row[c] ?? ''));
  return { name, values, formulas: values.map((row) => row.map(() => '')) };
}
