import { useState } from 'preact/hooks';

let last = 0;

/** An id that stays the same while the component lives, to tie labels to fields. */
export function useId(stem: string): string {
  const [id] = useState(() => {
    last += 1;
    return `${stem}-${last}`;
  });
  return id;
}
