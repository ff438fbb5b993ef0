import { useState } from 'preact/hooks';
import { columnLetters } from '../../../shared/block/a1';
import { dayFromIso } from '../../../shared/core/calendar/day';
import { datedWeights, type UndatedWeights } from '../../../shared/lists/undated-weights';
import { Button } from '../parts/button';
import { InputField } from '../parts/field';
import { Notice } from '../parts/notice';
import { useChangeCells } from '../parts/use-change-cells';

/** Asks once of which day the weights are, and puts that day beside them. */
export function UndatedWeightsAsked({ undated, today }: { undated: UndatedWeights; today: string }) {
  const [typed, setTyped] = useState(today);
  const work = useChangeCells();
  const where = `column ${columnLetters(undated.column)} of “${undated.tab}”`;
  const write = (): void =>
    work.change(() => {
      const day = dayFromIso(typed);
      if (day === undefined || typed > today)
        throw new Error(
          `The day must be ${today} or before, got ${typed || 'nothing'}. Nothing was written.`,
        );
      return datedWeights(undated, day);
    }, `Done: ${typed} is written into ${where}.`);
  return (
    <Notice kind="warning">
      When were {undated.rows.map(({ name }) => `“${name}”`).join(', ')} weighed? No day stands beside the
      weight. Until one does it counts as today’s, every day anew: the pigs gain nothing.
      <InputField type="date" label="Day of weighing" value={typed} onChange={setTyped} />
      <Button disabled={work.busy} onPress={write}>
        {work.busy ? 'Writing…' : `Write it into ${where}`}
      </Button>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </Notice>
  );
}
