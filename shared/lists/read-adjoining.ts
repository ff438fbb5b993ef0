import { cellOf, describeWire, isErrorWire, nameKey, nameOf, type RowReader, refuse } from './read-list-cell';

/** Stands for a paddock without a position. */
const UNREAD = -1;
const SEPARATORS = /[,;\n]/;

/**
 * Positions of the adjoining paddocks of each paddock, from names parted by commas, semicolons or new lines.
 * A name that itself holds a comma is found too: the longest run of parts that is a name wins. Undefined where
 * nothing is typed. `itemless`: rows of paddocks in which something is wrong: their names are none the less.
 */
export function readAdjoining(
  paddocks: readonly { name: string }[],
  readers: readonly RowReader[],
  itemless: readonly RowReader[],
): (readonly number[] | undefined)[] {
  const positions = new Map([
    ...itemless.map((reader) => [nameKey(nameOf(reader)), UNREAD] as const),
    ...paddocks.map(({ name }, i) => [nameKey(name), i] as const),
  ]);
  return readers.map((reader, own) => {
    const cell = cellOf(reader, 'adjoining');
    if (cell === '' || (typeof cell === 'string' && cell.trim() === '')) return undefined;
    if (typeof cell === 'object' || typeof cell === 'boolean' || isErrorWire(cell)) {
      return refuse(reader, 'adjoining', 'be names of paddocks', describeWire(cell));
    }
    const { found, unknown } = namesIn(String(cell), positions);
    for (const name of unknown) {
      refuse(reader, 'adjoining', 'be names in the paddock list', JSON.stringify(name));
    }
    return found.filter(
      (position, at) => position !== own && position !== UNREAD && found.indexOf(position) === at,
    );
  });
}

function namesIn(text: string, positions: ReadonlyMap<string, number>) {
  const found: number[] = [];
  const unknown: string[] = [];
  const parts = separated(text);
  for (let i = 0; i < parts.length; ) {
    let count = parts.length - i;
    while (count > 0 && !positions.has(joined(parts, i, count))) count -= 1;
    if (count > 0) found.push(positions.get(joined(parts, i, count))!);
    else if (parts[i]!.text.trim() !== '') unknown.push(parts[i]!.text.trim());
    i += Math.max(count, 1);
  }
  return { found, unknown };
}

/** Parts with the separator that follows each, so that they can be put together again. */
function separated(text: string): { text: string; mark: string }[] {
  const parts: { text: string; mark: string }[] = [];
  let part = '';
  for (const unit of text) {
    if (SEPARATORS.test(unit)) {
      parts.push({ text: part, mark: unit });
      part = '';
    } else part += unit;
  }
  return [...parts, { text: part, mark: '' }];
}

function joined(parts: readonly { text: string; mark: string }[], from: number, count: number): string {
  const run = parts.slice(from, from + count);
  return nameKey(run.map((part, i) => part.text + (i < count - 1 ? part.mark : '')).join(''));
}
