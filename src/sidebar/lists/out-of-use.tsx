import { dayFromIso } from '../../../shared/core/calendar/day';
import { shutCells } from '../../../shared/tasks/shut-cells';
import { Button } from '../parts/button';
import { Notice } from '../parts/notice';
import { useChangeCells } from '../parts/use-change-cells';
import type { Lists } from './use-lists';
import * as words from './words';

/** For each paddock that may be out of use a question: one press shuts it in the grower's own list. */
export function OutOfUseAsked({ lists, today }: { lists: Lists; today: string }) {
  const work = useChangeCells();
  const source = lists.sources.paddocks;
  const day = dayFromIso(today);
  if (!source || day === undefined) return null;
  return lists.unused.map(({ paddock, sentence }) => (
    <Notice kind="warning" key={sentence}>
      {sentence}
      <Button
        disabled={work.busy}
        onPress={() =>
          work.change(
            () => shutCells(source, paddock, { shutFrom: day }).map(({ cell }) => cell),
            words.shut(paddock.name.trim(), today, source.tab.name),
          )
        }
      >
        Shut “{paddock.name.trim()}” from today on
      </Button>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </Notice>
  ));
}
