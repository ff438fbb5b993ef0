import { isFilled } from '../../block/is-filled';
import type { BlockContent } from '../../block/read-block';
import { stretches } from '../../block/stretches';
import type { ClearInCopy } from '../../contract';
import { PRIVATE_COLUMNS, type PrivateColumns, type PrivateKind } from './private-columns';
import { privateExtras } from './private-extras';
import { withoutUnit } from './without-unit';

type Area = ClearInCopy['areas'][number];

/** One column or cell with something typed that a stranger need not know. */
export interface PrivateFound {
  readonly kind: PrivateKind;
  readonly block: string;
  /** "Unit price in the fence materials". */
  readonly what: string;
  /** How many of its cells hold something. */
  readonly filled: number;
  readonly area: Area;
}

/** Everything private in our own tables, in their order; columns where nothing is typed are left out. */
export function findPrivate(blocks: readonly BlockContent[]): readonly PrivateFound[] {
  return blocks.flatMap((block) => [
    ...PRIVATE_COLUMNS.filter((spec) => spec.block === block.info.name).flatMap((spec) => [
      ...inColumns(block, spec),
      ...besideLabels(block, spec),
    ]),
    ...extras(block),
  ]);
}

function extras(block: BlockContent): readonly PrivateFound[] {
  return privateExtras(block).flatMap(({ what, column, rows }) =>
    stretches(rows).map(({ first, count }): PrivateFound => {
      const area = areaIn(block, first, column, count);
      return { kind: 'notes', block: block.info.name, what, filled: count, area };
    }),
  );
}

function inColumns(block: BlockContent, spec: PrivateColumns): readonly PrivateFound[] {
  const plain = block.values.map((row) => row.map(withoutUnit));
  const at = plain.findIndex((row) => spec.headings.every((heading) => row.includes(withoutUnit(heading))));
  if (at < 0) return [];
  const found = spec.endRow?.(block) ?? -1;
  const end = found > at ? found : block.values.length;
  return Object.entries(spec.columns).flatMap(([heading, kind]) => {
    const column = plain[at]!.indexOf(heading);
    const rows = Array.from({ length: end - at - 1 }, (_, i) => at + 1 + i);
    const filled = rows.filter((r) => isFilled(block, r, column));
    const [first, last] = [filled[0], filled[filled.length - 1]];
    if (column < 0 || first === undefined || last === undefined) return [];
    const area = areaIn(block, first, column, last - first + 1);
    return [
      { kind, block: block.info.name, what: `“${heading}” in ${spec.table}`, filled: filled.length, area },
    ];
  });
}

function besideLabels(block: BlockContent, { labels, table }: PrivateColumns): readonly PrivateFound[] {
  return Object.entries(labels ?? {}).flatMap(([label, kind]) => {
    const row = block.values.findIndex((cells) => cells[0] === label);
    if (row < 0 || !isFilled(block, row, 1)) return [];
    const area = areaIn(block, row, 1, 1);
    return [{ kind, block: block.info.name, what: `“${label}” in ${table}`, filled: 1, area }];
  });
}

function areaIn({ info }: BlockContent, row: number, column: number, rows: number): Area {
  return { tab: info.tab, row: info.row + row, column: info.column + column, rows, columns: 1 };
}
