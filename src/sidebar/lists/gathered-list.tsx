import type { Gathered } from '../../../shared/lists/gathered-cells';
import { Button } from '../parts/button';
import { Notice } from '../parts/notice';
import { useChangeCells } from '../parts/use-change-cells';
import * as words from './words';

/** What does not stand as a list, as it is read; one press makes a list of it. */
export function GatheredAsked({ gathered }: { gathered: Gathered | undefined }) {
  const work = useChangeCells();
  if (!gathered) return null;
  const { kind, sentence, said, area, tab, cells } = gathered;
  return (
    <Notice kind="warning">
      {sentence}
      <ul>
        {said.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
      <Button disabled={work.busy} onPress={() => work.change(() => cells, words.doneList(area, tab, kind))}>
        {work.busy ? 'Writing…' : `Make this my ${kind === 'groups' ? 'group' : 'paddock'} list`}
      </Button>
      <p class="hint">{words.listGoesTo(area, tab)}</p>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </Notice>
  );
}
