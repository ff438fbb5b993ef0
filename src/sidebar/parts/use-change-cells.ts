import type { CellChange } from '../../../shared/contract';
import { usePage } from '../page';
import { ask } from '../server';
import { useReread } from './use-book';
import { useWork, type Work } from './use-work';

export interface ChangeCells extends Work {
  /** What `cells` throws is shown, and nothing is written. */
  readonly change: (cells: () => readonly CellChange[], done: string) => void;
}

/** Writes single cells at the grower's wish, says so and has the file read again. */
export function useChangeCells(): ChangeCells {
  const work = useWork();
  const { say } = usePage();
  const reread = useReread();
  const change = (cells: () => readonly CellChange[], done: string): void =>
    work.start(async () => {
      await ask('changeCells', { cells: [...cells()] });
      say(done);
      reread();
    });
  return { ...work, change };
}
