import { doubtWords } from '../../../shared/lists/column-doubts';
import { withColumn } from '../../../shared/lists/list-columns';
import { FIELD_LABELS, type ListKind } from '../../../shared/lists/model';
import { Button } from '../parts/button';
import { Notice } from '../parts/notice';
import type { Lists } from './use-lists';
import * as words from './words';

/** For each two columns that may both be a field a question: one press says which. */
export function ColumnQuestions({ kinds, lists }: { kinds: readonly ListKind[]; lists: Lists }) {
  return kinds.flatMap((kind) => {
    const list = lists.chosen[kind];
    return (list?.doubts ?? []).map((doubt) => (
      <Notice kind="warning" key={`${kind} ${doubt.field} ${doubt.other}`}>
        {words.whichIs(FIELD_LABELS[doubt.field], list!.tab)}
        <div class="pair">
          {[doubt.column, doubt.other].map((column, i) => (
            <Button key={column} onPress={() => lists.choose(withColumn(list!, doubt.field, column))}>
              {doubtWords(lists.tabOf(list), list!, doubt)[i]}
            </Button>
          ))}
        </div>
      </Notice>
    ));
  });
}
