import { useMemo, useState } from 'preact/hooks';
import { MEMORY_LABELS } from '../../../shared/lists/list-memory';
import type { FoundList } from '../../../shared/lists/model';
import { type ChosenLists, type GrowerLists, growerLists } from '../../../shared/tasks/grower-lists';
import type { UnitSystem } from '../../../shared/units/units';
import type { Book } from '../parts/use-book';
import type { TaskState } from '../parts/use-task';

export interface Lists extends GrowerLists {
  readonly choose: (list: FoundList) => void;
}

/** The grower's two lists: found, or as the grower corrected them on this page, and what stands in them. */
export function useLists(book: Book, units: UnitSystem): Lists {
  const [own, setOwn] = useState<ChosenLists>({});
  const read = useMemo(() => growerLists(book, units, own), [book, units, own]);
  return { ...read, choose: (list) => setOwn((before) => ({ ...before, [list.kind]: list })) };
}

/** The lists of a task's form; choosing another is an answer. */
export function answeredLists(lists: GrowerLists, { answer }: TaskState): Lists {
  return { ...lists, choose: (list) => answer(MEMORY_LABELS[list.kind], list) };
}
