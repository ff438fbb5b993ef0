import { useState } from 'preact/hooks';
import { dayFromIso } from '../../../shared/core/calendar/day';
import type { Gathered } from '../../../shared/lists/gathered-cells';
import { listFromSelection } from '../../../shared/lists/list-columns';
import { listedLines } from '../../../shared/lists/listed-lines';
import type { ListKind } from '../../../shared/lists/model';
import { nameKey } from '../../../shared/lists/read-list-cell';
import { dateOrder } from '../../../shared/locale/date-order';
import { decimalComma } from '../../../shared/locale/decimal-comma';
import { readBook } from '../../../shared/tasks/run-task';
import { useWork, type Work } from '../parts/use-work';
import { ask } from '../server';
import type { Lists } from './use-lists';

interface Pointing extends Work {
  /** The grower has selected a cell of the list in the sheet. */
  readonly point: (kind: ListKind) => void;
  /** Without headings above that cell: what its lines say, to be made a list. */
  readonly lines: Gathered | undefined;
}

export function usePointing(lists: Lists): Pointing {
  const work = useWork();
  const [lines, setLines] = useState<Gathered>();
  const point = (kind: ListKind): void =>
    work.start(async () => {
      setLines(undefined);
      const selection = await ask('readSelection', {});
      const [tab] = await ask('readTabs', { tabs: [selection.tab] });
      const isPaddock = (text: string): boolean =>
        lists.paddocks.some(({ name }) => nameKey(name) === nameKey(text));
      try {
        lists.choose(listFromSelection(kind, selection, tab));
      } catch (error) {
        const { locale, today } = (await readBook(ask)).overview;
        const dates = { order: dateOrder(locale), today: dayFromIso(today) ?? 0 };
        const habits = { comma: decimalComma(locale), ...dates, isPaddock };
        const said = tab && listedLines(kind, tab, selection, habits);
        if (!said) throw error;
        setLines(said);
      }
    });
  const isMade =
    lines &&
    lists.found[lines.kind].some(
      ({ tab, columns }) => tab === lines.tab && Object.values(columns).includes(lines.cells[0]!.column),
    );
  return { ...work, point, lines: isMade ? undefined : lines };
}
