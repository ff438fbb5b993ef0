import type { UnitSystem } from '../../../../shared/units/units';
import { fromInside, symbolOf } from '../../../../shared/units/units';
import { listFromSelection } from '../../lists/list-columns';
import { ListPicker } from '../../lists/list-picker';
import type { Lists } from '../../lists/use-lists';
import { formatNumber } from '../../numbers/format-number';
import { count } from '../../parts/day-words';
import { Notice } from '../../parts/notice';
import { useWork } from '../../parts/use-work';
import { ask } from '../../server';

/** The paddock list alone, for tasks that need no group list. */
export function PaddockPicker({ lists, units }: { lists: Lists; units: UnitSystem }) {
  const work = useWork();
  const area = lists.paddocks.reduce((sum, { areaSquareMeters }) => sum + areaSquareMeters, 0);
  const summary = `${count(lists.paddocks.length, 'paddock')} read, ${formatNumber(fromInside(area, 'area', units))} ${symbolOf('area', units)} in all.`;
  const point = (): void =>
    work.start(async () => {
      const selection = await ask('readSelection', {});
      const [tab] = await ask('readTabs', { tabs: [selection.tab] });
      if (!tab?.values[selection.row - 1]) {
        throw new Error(`Nothing stands in row ${selection.row} of “${selection.tab}”.`);
      }
      lists.choose(listFromSelection('paddocks', selection, tab));
    });
  return (
    <>
      <ListPicker
        kind="paddocks"
        found={lists.found.paddocks}
        list={lists.chosen.paddocks}
        summary={summary}
        onChange={lists.choose}
        onPoint={point}
      />
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </>
  );
}
