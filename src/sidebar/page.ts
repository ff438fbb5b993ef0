/** What every screen may use of the page round it. */
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';

export interface PageServices {
  /** Puts a sentence on the status line, where screen readers hear it. */
  readonly say: (sentence: string) => void;
  /** Opens a task. */
  readonly open: (taskId: string) => void;
}

export const Page = createContext<PageServices>({ say: () => undefined, open: () => undefined });

export function usePage(): PageServices {
  return useContext(Page);
}
