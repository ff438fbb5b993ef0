import { useEffect, useRef } from 'preact/hooks';

/**
 * Calls `reset` when what stands in the sheet has changed since it was read last: then the sheet counts, and what was
 * typed on the page before is out of date.
 */
export function useReset(standing: unknown, reset: () => void): void {
  const key = JSON.stringify(standing);
  const last = useRef(key);
  useEffect(() => {
    if (last.current !== key) reset();
    last.current = key;
  }, [key]);
}
