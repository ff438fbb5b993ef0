import type { ListKind } from '../../../shared/lists/model';
import { fromInside, symbolOf, type UnitSystem } from '../../../shared/units/units';
import { formatNumber } from '../numbers/format-number';
import { count } from '../parts/day-words';
import { Notice } from '../parts/notice';
import { useWork } from '../parts/use-work';
import { ask } from '../server';
import { listFromSelection } from './list-columns';
import { ListPicker } from './list-picker';
import type { Lists } from './use-lists';

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
      if (!tab?.values[selection.row - 1]) {
        throw new Error(`Nothing stands in row ${selection.row} of “${selection.tab}”.`);
      }
      lists.choose(listFromSelection(kind, selection, tab));
    });
  return (
    <>
      <ListPicker
        kind={kind}
        found={lists.found[kind]}
        list={lists.chosen[kind]}
        summary={kind === 'paddocks' ? paddockWords(lists, units) : groupWords(lists)}
        onChange={lists.choose}
        onPoint={point}
      />
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </>
  );
}

function paddockWords({ paddocks }: Lists, units: UnitSystem): string {
  const area = paddocks.reduce((sum, { areaSquareMeters }) => sum + areaSquareMeters, 0);
  const words = `${formatNumber(fromInside(area, 'area', units))} ${symbolOf('area', units)}`;
  return `${count(paddocks.length, 'paddock')} read, ${words} in all.`;
}

function groupWords({ groups }: Lists): string {
  const head = groups.reduce((sum, group) => sum + group.head, 0);
  return `${count(groups.length, 'group')} read, ${count(head, 'pig')} in all.`;
}
