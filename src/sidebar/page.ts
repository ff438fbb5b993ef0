/** What every screen may use of the page round it. */
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';

export interface PageServices {
  /** Puts a sentence on the status line, where screen readers hear it. */
  readonly say: (sentence: string) => void;
  /** Of the other tasks, and the way to one. */
  readonly titles: readonly string[];
  readonly open: (title: string) => void;
}

export const Page = createContext<PageServices>({
  say: () => undefined,
  titles: [],
  open: () => undefined,
});

export function usePage(): PageServices {
  return useContext(Page);
}
