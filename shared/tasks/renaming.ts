import type { RenamedGroup } from '../table/renamed-group';
import type { Asking, ChoiceForm } from './ask';
import * as words from './words';

export const RENAMED_OPTIONS = {
  open: 'Not answered yet',
  yes: 'Yes, the same group',
  no: 'No, another group',
} as const;

/** Whether a group of the list is one of a table under another name. */
export type Renaming = ChoiceForm<keyof typeof RENAMED_OPTIONS>;

/** Asks; until it is answered, `why` holds the task back. */
export function askRenamed(
  ask: Asking,
  renamed: RenamedGroup | undefined,
  why: (question: string) => string,
): Renaming | undefined {
  const renaming = renamed && ask.choice(words.isNewName(renamed.is, renamed.was), RENAMED_OPTIONS, 'open');
  if (renaming?.value === 'open') ask.wrong([why(renaming.legend)]);
  return renaming;
}
