import type { Day } from '../../../../shared/core/calendar/day';
import { type BarnDoorInput, barnDoorList } from '../../../../shared/table/barn-door-list';
import { usePage } from '../../page';
import { Button } from '../../parts/button';
import { downloadText } from '../../parts/download-text';
import { Notice } from '../../parts/notice';
import { useWork } from '../../parts/use-work';
import { movesCalendar } from './moves-calendar';
import { printMoves } from './print-moves';
import * as words from './words';

interface Props {
  readonly input: Omit<BarnDoorInput, 'from'>;
  /** Reads the file again; throws where table or lists are no longer those of the plan. */
  readonly readNow: () => Promise<unknown>;
  readonly today: Day;
}

/** The moves outside the sheet: a calendar file and a printed list. */
export function TakeAlong({ input, readNow, today }: Props) {
  const work = useWork();
  const { say } = usePage();
  const list = () => barnDoorList({ ...input, from: today });
  const calendar = (): void =>
    work.start(async () => {
      await readNow();
      downloadText('pig-moves.ics', 'text/calendar;charset=utf-8', movesCalendar(list(), new Date()));
      say(words.IN_DOWNLOADS);
    });
  const print = (): void => {
    // At once: browsers let a page open a window only while a button is being pressed.
    const opened = window.open('', '_blank');
    work.start(async () => {
      if (!opened) throw new Error(words.NO_WINDOW);
      try {
        await readNow();
        printMoves(opened, list());
      } catch (error) {
        opened.close();
        throw error;
      }
    });
  };
  return (
    <>
      <p>{words.CALENDAR_HOLDS}</p>
      <div class="pair">
        <Button disabled={work.busy} onPress={calendar}>
          Download the calendar file
        </Button>
        <Button disabled={work.busy} onPress={print}>
          Open the list to print
        </Button>
      </div>
      <p class="hint">{words.DELETE_OLD}</p>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </>
  );
}
