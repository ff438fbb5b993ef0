/** Runs the planner beside the page where the browser lets us, else on the page in slices. */
import type { PlanProblem } from '../../../shared/plan/model';
import type { PlanNews } from '../../../shared/plan/plan-news';
import { inSlices, type Listener } from './in-slices';

/** A worker that says nothing for so long is taken for refused; judgement. */
const PATIENCE_MS = 3000;

/**
 * The page's own script, which is a planner when it is started as a worker: the page needs no second file, and does not
 * carry the planner twice. Must be read while the script runs for the first time.
 */
const ownScript = typeof document === 'undefined' ? '' : (document.currentScript?.textContent ?? '');

let address: string | undefined;
/** The frame that the page stands in refused a worker: from then on it is not tried again. */
let refused = ownScript === '';

/** Plans and explains; tells what it finds until it is done. Returns what stops it. */
export function runPlan(problem: PlanProblem, listener: Listener): () => void {
  const worker = startWorker();
  if (!worker) return inSlices(problem, listener);
  let heard = false;
  let stop = (): void => worker.terminate();
  const refuse = (): void => {
    refused = true;
    worker.terminate();
    stop = inSlices(problem, listener);
  };
  const timer = setTimeout(refuse, PATIENCE_MS);
  worker.onmessage = ({ data }: MessageEvent<PlanNews>) => {
    heard = true;
    clearTimeout(timer);
    listener.hear(data);
    if (data.kind === 'words') worker.terminate();
  };
  worker.onerror = (event) => {
    clearTimeout(timer);
    if (heard) listener.fail(event.message);
    else refuse();
  };
  worker.postMessage(problem);
  return () => {
    clearTimeout(timer);
    stop();
  };
}

function startWorker(): Worker | undefined {
  if (refused) return undefined;
  try {
    address ??= URL.createObjectURL(new Blob([ownScript], { type: 'text/javascript' }));
    return new Worker(address);
  } catch {
    refused = true;
    return undefined;
  }
}
