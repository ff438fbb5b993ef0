import { dayFromIso } from '../../../shared/core/calendar/day';
import { shutCells } from '../../../shared/tasks/shut-cells';
import { usePage } from '../page';
import { Button } from '../parts/button';
import { Notice } from '../parts/notice';
import { useReread } from '../parts/use-book';
import { useWork } from '../parts/use-work';
import { ask } from '../server';
import type { Lists } from './use-lists';

/** For each paddock that may be out of use a question: one press shuts it in the grower's own list. */
export function OutOfUseAsked({ lists, today }: { lists: Lists; today: string }) {
  const work = useWork();
  const { say } = usePage();
  const reread = useReread();
  const source = lists.sources.paddocks;
  const day = dayFromIso(today);
  if (!source || day === undefined) return null;
  return lists.unused.map(({ paddock, sentence }) => (
    <Notice kind="warning" key={sentence}>
      {sentence}
      <Button
        disabled={work.busy}
        onPress={() =>
          work.start(async () => {
            const cells = shutCells(source, paddock, { shutFrom: day }).map(({ cell }) => cell);
            await ask('changeCells', { cells });
            say(`Done: “${paddock.name.trim()}” is shut from ${today} in “${source.tab.name}”.`);
            reread();
          })
        }
      >
        Shut “{paddock.name.trim()}” from today on
      </Button>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </Notice>
  ));
}
