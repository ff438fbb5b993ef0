import { seasonNotes } from '../../../shared/lists/season-notes';
import type { NotedSeason } from '../../../shared/lists/weighing-notes';
import type { GrowerLists } from '../../../shared/tasks/grower-lists';
import { SentencesNotice } from '../parts/notice';
import * as words from './words';

/** What in the lists does not fit the season; undefined while the season is not known. */
export function seasonNotesOf(lists: GrowerLists, season: NotedSeason | undefined): readonly string[] {
  if (!season) return [];
  const { paddocks, groups, chosen } = lists;
  return seasonNotes(
    { paddocks, groups, paddockTab: chosen.paddocks?.tab ?? '', groupTab: chosen.groups?.tab ?? '' },
    season,
  );
}

/** Sentences about the lists that stop nothing. */
export function ListNotes({ notes }: { notes: readonly string[] }) {
  return <SentencesNotice kind="note" lead={words.IN_CASE} sentences={notes} />;
}
