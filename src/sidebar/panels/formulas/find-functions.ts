/** Finds cell functions by words, and groups them by what they are about. */
import type { AnyEntry, Topic } from '../../../../shared/catalogue/define';

export interface TopicGroup {
  readonly topic: Topic;
  readonly title: string;
  readonly entries: readonly AnyEntry[];
}

const TITLES: Readonly<Record<Topic, string>> = {
  fence: 'Fence',
  energizer: 'Energizer and wire',
  pigs: 'Pigs',
  rotation: 'Rotation and ground',
  training: 'Training',
};

/** Words of a question that say nothing of what is wanted. */
const FILLING = new Set(
  'a an and any are can do does for get give have how i if in is it long many me more most much my need needed of on or our per should take takes the them they to want what when which will with you'.split(
    ' ',
  ),
);

/** Everyday words, and those of the catalogue that mean the same. */
const MEANING: Readonly<Record<string, readonly string[]>> = {
  acre: ['area'],
  acreage: ['area'],
  big: ['area', 'weight'],
  drink: ['water'],
  earth: ['ground rod'],
  eat: ['feed'],
  far: ['length'],
  fertilizer: ['nitrogen'],
  field: ['paddock', 'boundary'],
  food: ['feed'],
  grain: ['feed'],
  grass: ['forage'],
  gps: ['latitude'],
  grow: ['weight', 'grown'],
  heat: ['temperature'],
  heavy: ['weight'],
  hectare: ['area'],
  high: ['height'],
  hot: ['temperature'],
  manure: ['nitrogen'],
  move: ['stay', 'rotation'],
  net: ['netting'],
  shade: ['shelter'],
  size: ['area', 'weight'],
  strand: ['wire'],
  summer: ['temperature'],
  volt: ['voltage', 'volts'],
  weigh: ['weight'],
};

/**
 * Functions in which every word of the search occurs, or means something that does, save for words that say nothing;
 * where none has all of them in its name or summary, its arguments and their help count too. All where it is empty.
 */
export function findFunctions(catalogue: readonly AnyEntry[], search: string): TopicGroup[] {
  const typed = search.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
  const telling = typed.filter((word) => !FILLING.has(word));
  const wanted = telling.length > 0 ? telling : typed;
  // Where a word begins: no liveweight for a weight.
  const fits = (text: string): boolean =>
    wanted.every((word) => meaningsOf(word).some((one) => ` ${text.toLowerCase()}`.includes(` ${one}`)));
  const byName = catalogue.filter((entry) => fits(nameOf(entry)));
  const found =
    byName.length > 0
      ? byName
      : catalogue.filter((entry) => fits([nameOf(entry), ...helps(entry)].join(' ')));
  return (Object.keys(TITLES) as Topic[])
    .map((topic) => ({ topic, title: TITLES[topic], entries: found.filter((one) => one.topic === topic) }))
    .filter(({ entries }) => entries.length > 0);
}

/** The word, without the s of several, and what it means. */
function meaningsOf(word: string): readonly string[] {
  const one = word.replace(/([^s]{2})s$/, '$1');
  return [one, ...(MEANING[one] ?? [])];
}

function nameOf({ name, summary, topic }: AnyEntry): string {
  return `${name.replace(/_/g, ' ')} ${summary} ${TITLES[topic]}`;
}

function helps(entry: AnyEntry): string[] {
  return entry.params.flatMap((param) => [param.name.replace(/_/g, ' '), param.help]);
}
