import { listFromSelection } from '../../../shared/lists/list-columns';
import type { ListKind } from '../../../shared/lists/model';
import type { UnitSystem } from '../../../shared/units/units';
import { Notice } from '../parts/notice';
import { useWork } from '../parts/use-work';
import { ask } from '../server';
import { ColumnQuestions } from './column-questions';
import { GatheredAsked } from './gathered-groups';
import { ListPicker } from './list-picker';
import type { Lists } from './use-lists';
import * as words from './words';

interface Props {
  readonly kind: ListKind;
  readonly lists: Lists;
  readonly units: UnitSystem;
}

/** One of the two lists alone, for tasks that do not need both or have their own choice of units. */
export function OneList({ kind, lists, units }: Props) {
  const work = useWork();
  const point = (): void =>
    work.start(async () => {
      const selection = await ask('readSelection', {});
      const [tab] = await ask('readTabs', { tabs: [selection.tab] });
      lists.choose(listFromSelection(kind, selection, tab));
    });
  return (
    <>
      <ColumnQuestions kinds={[kind]} lists={lists} />
      {kind === 'groups' && <GatheredAsked gathered={lists.gathered} />}
      <ListPicker
        kind={kind}
        lists={lists}
        summary={kind === 'paddocks' ? words.paddockWords(lists, units) : words.groupWords(lists)}
        onPoint={point}
      />
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </>
  );
}
