import { useEffect, useRef, useState } from 'preact/hooks';
import { usePage } from '../page';

export interface Work {
  readonly busy: boolean;
  /** Why the last work failed, as a sentence. */
  readonly problem: string | undefined;
  /** Starts work unless some is under way; what it throws becomes `problem`. */
  readonly start: (work: () => Promise<void>) => void;
  readonly clear: () => void;
}

/** One piece of work at a time, with its waiting and its failing shown; the status line says nothing of what failed. */
export function useWork(): Work {
  const [busy, setBusy] = useState(false);
  const [problem, setProblem] = useState<string>();
  const { say } = usePage();
  const running = useRef(false);
  const here = useRef(true);
  useEffect(
    () => () => {
      here.current = false;
    },
    [],
  );
  const start = async (work: () => Promise<void>): Promise<void> => {
    if (running.current) return;
    running.current = true;
    setBusy(true);
    setProblem(undefined);
    try {
      await work();
    } catch (error) {
      if (!here.current) return;
      setProblem(error instanceof Error ? error.message : String(error));
      say('');
    } finally {
      running.current = false;
      if (here.current) setBusy(false);
    }
  };
  return { busy, problem, start, clear: () => setProblem(undefined) };
}
