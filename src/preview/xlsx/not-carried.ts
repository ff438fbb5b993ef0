/**
 * What of an opened .xlsx file would be missing in the file saved from here: both are looked at, so that the answer
 * does not depend on what we believe about reading and writing.
 */
import { NEW_TAB_SIZE } from '../engine/book';
import { type Area, areaOfA1, overlaps } from '../service/area';
import { fileContents, type Item, KINDS, type Kind } from './file-contents';
import { zipParts } from './zip-parts';

export type NotCarried = { counts: Partial<Record<Kind, number>>; failingFormulas: number };

export async function notCarried(opened: Uint8Array, saved: Uint8Array): Promise<NotCarried> {
  const before = fileContents(await zipParts(opened));
  const after = fileContents(await zipParts(saved));
  const counts: NotCarried['counts'] = {};
  for (const kind of Object.keys(KINDS) as Kind[]) {
    const lost = lostItems(before.items.filter(isOf(kind)), after.items.filter(isOf(kind)));
    if (lost > 0) counts[kind] = lost;
  }
  const failedBefore = new Set(before.failing.map(({ tab, place }) => `${tab} ${place}`));
  const failingFormulas = after.failing.filter(
    ({ tab, place }) => !failedBefore.has(`${tab} ${place}`),
  ).length;
  return { counts, failingFormulas };
}

function isOf(kind: Kind): (item: Item) => boolean {
  return (item) => item.kind === kind;
}

function lostItems(before: Item[], after: Item[]): number {
  const keptOf = new Map<string | undefined, { places: Set<string>; areas: Area[] }>();
  for (const item of after) {
    const kept = keptOf.get(item.how) ?? { places: new Set(), areas: [] };
    kept.places.add(`${item.tab} ${item.place}`);
    kept.areas.push(...areasOf(item));
    keptOf.set(item.how, kept);
  }
  const isKept = (item: Item): boolean => {
    const kept = keptOf.get(item.how);
    if (!kept || kept.places.has(`${item.tab} ${item.place}`)) return kept !== undefined;
    const corners = areasOf(item).map((area) => ({ ...area, rows: 1, columns: 1 }));
    return corners.length > 0 && corners.every((corner) => kept.areas.some((area) => overlaps(area, corner)));
  };
  const missing = before.filter((item) => !isKept(item)).length;
  return Math.max(missing, before.length - after.length);
}

/** Rectangles of an item, the tab's number in the place of the tab's id; none for what has only a name. */
function areasOf({ tab, place }: Item): Area[] {
  return place.split(' ').flatMap((range) => areaOfA1(range, String(tab), NEW_TAB_SIZE) ?? []);
}

/** The loss in words, or '' where nothing is lost. */
export function notCarriedSentence({ counts, failingFormulas }: NotCarried): string {
  const lost = Object.entries(counts).map(([kind, count]) => counted(count, KINDS[kind as Kind]));
  const total = Object.values(counts).reduce((sum, count) => sum + count, 0);
  const lines: string[] = [];
  if (lost.length > 0) {
    const missing = total === 1 ? 'It will be missing' : 'They will be missing';
    lines.push(`Not carried over from this file: ${lost.join(', ')}. ${missing} if you save it from here.`);
  }
  if (failingFormulas > 0) {
    const rest = failingFormulas === 1 ? 'shows an error here and is' : 'show an error here and are';
    lines.push(`${counted(failingFormulas, ['formula', 'formulas'])} of this file ${rest} saved unchanged.`);
  }
  return lines.join(' ');
}

function counted(count: number, [one, many]: readonly [string, string]): string {
  return `${count} ${count === 1 ? one : many}`;
}
