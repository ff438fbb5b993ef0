/** Several cells of a table typed at once. Whoever moves away what the page names ends with a table that keeps the rest. */
import { cellA1 } from '../../shared/block/a1';
import { isFilled } from '../../shared/block/is-filled';
import type { BlockContent } from '../../shared/block/read-block';
import { type Composed, composed, isNamed, type TypedTask, withoutNamed } from './typed-cells';
import { type Typing, withTyped } from './typed-spills';

export interface Together {
  readonly tried: number;
  readonly kept: number;
  readonly refused: number;
  readonly lost: readonly string[];
}

/** The same text in two cells, one below the other, through the whole table. */
export async function trySameTwice(task: TypedTask): Promise<Together> {
  const pairs = task.content.values.slice(1).flatMap((row, r) =>
    row.flatMap((_, c) =>
      // Every cell is in a pair with the one above or below it.
      (r + c) % 2 === 0 ? [[typing(r, c, 'mark twice'), typing(r + 1, c, 'mark twice')]] : [],
    ),
  );
  let all = NOTHING;
  for (const pair of pairs) all = added(all, await settled(task, pair));
  return all;
}

/** A text of its own in every blank cell. */
export function tryEveryBlank(task: TypedTask): Promise<Together> {
  const blanks = task.content.values.flatMap((row, r) =>
    row.flatMap((_, c) => (isFilled(task.content, r, c) ? [] : [[r, c] as const])),
  );
  return settled(
    task,
    blanks.map(([r, c], i) => typing(r, c, `blank ${i} of the table`)),
  );
}

const NOTHING: Together = { tried: 0, kept: 0, refused: 0, lost: [] };

function added(one: Together, other: Together): Together {
  return {
    tried: one.tried + other.tried,
    kept: one.kept + other.kept,
    refused: one.refused + other.refused,
    lost: [...one.lost, ...other.lost],
  };
}

function typing(row: number, column: number, value: string): Typing {
  return { row, column, value, formula: '' };
}

const writtenTables = new Map<TypedTask, Composed>();

/** The table as it is built without anything typed. */
async function writtenBy(task: TypedTask): Promise<Composed> {
  const written = writtenTables.get(task) ?? task.written ?? (await composed(task, task.content));
  writtenTables.set(task, written);
  return written;
}

/** Rebuilds until the table is written, each time without what the page has named. */
async function settled(task: TypedTask, typed: readonly Typing[]): Promise<Together> {
  const written = (await writtenBy(task)).cells;
  let content = task.content;
  let left = typed;
  for (;;) {
    const rebuilt = await task.rebuild(withTyped(content, written, left));
    const refused = typed.length - left.length;
    if (!('refused' in rebuilt)) {
      const lost = inWords(content, gone(rebuilt.cells.flat(), rebuilt.told ?? [], left));
      return { tried: typed.length, kept: left.length - lost.length, refused, lost };
    }
    const rest = left.filter(
      ({ row, column, value, formula }) =>
        !isNamed(rebuilt.refused, content, [row, column], { kind: 'text', value, formula }),
    );
    const others = rest.length === left.length ? withoutNamed(content, rebuilt.refused) : content;
    if (others === undefined) {
      const all = inWords(content, left).map((cell) => `${cell}: not named: ${rebuilt.refused.join(' ')}`);
      return { tried: typed.length, kept: 0, refused, lost: all };
    }
    content = others;
    left = rest;
  }
}

/** Those of which the table and the sentences hold fewer than were typed. */
function gone(
  cells: readonly { readonly k: string; readonly v?: unknown }[],
  told: readonly string[],
  typed: readonly Typing[],
): readonly Typing[] {
  const lines = [...told, ...cells.map(({ k, v }) => (k === 't' ? String(v) : ''))].join('\n');
  const left = new Map<string, number>();
  return typed.filter(({ value }) => {
    const key = String(value);
    const count = left.get(key) ?? lines.split(key).length - 1;
    left.set(key, count - 1);
    return count <= 0;
  });
}

function inWords({ info }: BlockContent, typed: readonly Typing[]): readonly string[] {
  return typed.map(({ row, column, value }) => `${cellA1(info.row + row, info.column + column)} (${value})`);
}
