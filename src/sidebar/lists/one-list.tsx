import type { ListKind } from '../../../shared/lists/model';
import type { UnitSystem } from '../../../shared/units/units';
import { Notice } from '../parts/notice';
import { ColumnQuestions } from './column-questions';
import { GatheredAsked } from './gathered-list';
import { ListPicker } from './list-picker';
import type { Lists } from './use-lists';
import { usePointing } from './use-pointing';
import * as words from './words';

interface Props {
  readonly kind: ListKind;
  readonly lists: Lists;
  readonly units: UnitSystem;
}

/** One of the two lists alone, for tasks that do not need both or have their own choice of units. */
export function OneList({ kind, lists, units }: Props) {
  const work = usePointing(lists);
  return (
    <>
      <ColumnQuestions kinds={[kind]} lists={lists} />
      <GatheredAsked gathered={work.lines ?? (kind === 'groups' ? lists.gathered : undefined)} />
      <ListPicker
        kind={kind}
        lists={lists}
        summary={kind === 'paddocks' ? words.paddockWords(lists, units) : words.groupWords(lists)}
        onPoint={() => work.point(kind)}
      />
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </>
  );
}
