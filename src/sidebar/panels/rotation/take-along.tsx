import { useState } from 'preact/hooks';
import type { Day } from '../../../../shared/core/calendar/day';
import { type BarnDoorInput, barnDoorList } from '../../../../shared/table/barn-door-list';
import { usePage } from '../../page';
import { Button } from '../../parts/button';
import { downloadText } from '../../parts/download-text';
import { Notice } from '../../parts/notice';
import { movesCalendar } from './moves-calendar';
import { printMoves } from './print-moves';

interface Props {
  readonly input: Omit<BarnDoorInput, 'from'>;
  readonly today: Day;
}

/** The moves outside the sheet: a calendar file and a printed list. */
export function TakeAlong({ input, today }: Props) {
  const [problem, setProblem] = useState<string>();
  const { say } = usePage();
  const list = () => barnDoorList({ ...input, from: today });
  const calendar = (): void => {
    setProblem(undefined);
    downloadText('pig-moves.ics', 'text/calendar;charset=utf-8', movesCalendar(list(), new Date()));
    say('The calendar file pig-moves.ics is in your downloads.');
  };
  const print = (): void => {
    const shown = printMoves(list());
    setProblem(
      shown
        ? undefined
        : 'The browser did not let the page open a window. Allow pop-ups for this page and try again.',
    );
  };
  return (
    <>
      <p>Moves from today on, with what to carry and a reminder at noon of the day before.</p>
      <div class="pair">
        <Button onPress={calendar}>Download the calendar file</Button>
        <Button onPress={print}>Open the list to print</Button>
      </div>
      <p class="hint">
        The calendar does not follow later changes: delete its old moves before you add a new file.
      </p>
      {problem && <Notice kind="problem">{problem}</Notice>}
    </>
  );
}
