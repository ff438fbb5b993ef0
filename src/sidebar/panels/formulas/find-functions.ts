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

/** Functions in whose name, summary or arguments every word of the search occurs; all where it is empty. */
export function findFunctions(catalogue: readonly AnyEntry[], search: string): TopicGroup[] {
  const wanted = search
    .toLowerCase()
    .split(/[\s_]+/)
    .filter(Boolean);
  const fits = (entry: AnyEntry): boolean => {
    const text = [entry.name.replace(/_/g, ' '), entry.summary, TITLES[entry.topic], ...helps(entry)]
      .join(' ')
      .toLowerCase();
    return wanted.every((word) => text.includes(word));
  };
  return (Object.keys(TITLES) as Topic[])
    .map((topic) => ({
      topic,
      title: TITLES[topic],
      entries: catalogue.filter((entry) => entry.topic === topic && fits(entry)),
    }))
    .filter(({ entries }) => entries.length > 0);
}

function helps(entry: AnyEntry): string[] {
  return entry.params.flatMap((param) => [param.name.replace(/_/g, ' '), param.help]);
}
