import type { ListKind } from '../../../shared/lists/model';
import type { UnitSystem } from '../../../shared/units/units';
import { count } from '../parts/day-words';
import { Notice, SentencesNotice } from '../parts/notice';
import { UnitsChoice } from '../parts/units-choice';
import type { Book } from '../parts/use-book';
import { ColumnQuestions } from './column-questions';
import { GatheredAsked } from './gathered-list';
import { ListPicker } from './list-picker';
import { MissingFiguresAsked } from './missing-figures';
import type { Lists } from './use-lists';
import { usePointing } from './use-pointing';
import * as words from './words';

interface Props {
  readonly book: Book;
  readonly lists: Lists;
  readonly units: UnitSystem;
  readonly onUnits: (units: UnitSystem) => void;
}

/** The two lists, how they were understood, and everything that is wrong in them. */
export function ListsSection({ book, lists, units, onUnits }: Props) {
  const work = usePointing(lists);
  const picker = (kind: ListKind, summary: string) => (
    <ListPicker kind={kind} lists={lists} summary={summary} onPoint={() => work.point(kind)} />
  );
  return (
    <>
      <ColumnQuestions kinds={['paddocks', 'groups']} lists={lists} />
      <GatheredAsked gathered={work.lines ?? lists.gathered} />
      {lists.lacking.map((lacks) => (
        <MissingFiguresAsked key={lacks.field} book={book} lacks={lacks} />
      ))}
      <UnitsChoice units={units} onChange={onUnits} />
      <p class="hint">{words.UNIT_GOES_BEFORE}</p>
      {picker('paddocks', words.paddockWords(lists, units))}
      {picker('groups', words.groupWords(lists))}
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
      <SentencesNotice
        kind="problem"
        lead={words.toPutRight(count(lists.problems.length, 'thing'))}
        sentences={lists.problems.map(({ sentence }) => sentence)}
      />
    </>
  );
}
