import { useState } from 'preact/hooks';
import { columnLetters } from '../../../shared/block/a1';
import { dayFromIso } from '../../../shared/core/calendar/day';
import { datedWeights, type UndatedWeights } from '../../../shared/lists/undated-weights';
import { Button } from '../parts/button';
import { InputField } from '../parts/field';
import { Notice } from '../parts/notice';
import { useChangeCells } from '../parts/use-change-cells';
import * as words from './words';

/** Asks once of which day the weights are, and puts that day beside them. */
export function UndatedWeightsAsked({ undated, today }: { undated: UndatedWeights; today: string }) {
  const [typed, setTyped] = useState(today);
  const work = useChangeCells();
  const where = `column ${columnLetters(undated.column)} of “${undated.tab}”`;
  const write = (): void =>
    work.change(
      () => {
        const day = dayFromIso(typed);
        if (day === undefined || typed > today) throw new Error(words.dayToCome(today, typed || 'nothing'));
        return datedWeights(undated, day);
      },
      words.doneDay(typed, where),
    );
  return (
    <Notice kind="warning">
      {words.whenWeighed(undated.rows.map(({ name }) => `“${name}”`).join(', '))}
      <InputField type="date" label="Day of weighing" value={typed} onChange={setTyped} />
      <Button disabled={work.busy} onPress={write}>
        {work.busy ? 'Writing…' : `Write it into ${where}`}
      </Button>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </Notice>
  );
}
