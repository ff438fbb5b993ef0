import { firstFew } from '../../../shared/block/first-few';
import type { Written } from '../../../shared/tasks/run-task';
import { Notice } from './notice';
import { Sentence } from './sentence';
import * as words from './words';

/** `next`: the next useful task, as a sentence. */
export function WrittenNotices({
  block,
  a1,
  note,
  kept,
  astray = [],
  next,
}: Written & { next?: string | undefined }) {
  return (
    <>
      <Notice kind="done" takeFocus>
        Written on “{block.tab}”, {a1}. {note}
      </Notice>
      <AstrayNotice astray={astray} isDone />
      {next && (
        <p class="hint">
          <Sentence text={words.next(next)} />
        </p>
      )}
      {kept && kept.inPlace.length > 0 && (
        <Notice kind="note">{words.staysTyped(firstFew(kept.inPlace))}</Notice>
      )}
      {kept?.gaveWay && kept.gaveWay.length > 0 && (
        <Notice kind="note">{words.gaveWay(firstFew(kept.gaveWay))}</Notice>
      )}
      {kept && kept.below.length > 0 && <Notice kind="note">{words.keptBelow(firstFew(kept.below))}</Notice>}
    </>
  );
}

export function BesideNotice({ beside }: { beside: string | undefined }) {
  if (beside === undefined) return null;
  return <Notice kind="warning">{words.beside(beside)}</Notice>;
}

export function TakenNotice({ taken }: { taken: readonly string[] }) {
  if (taken.length === 0) return null;
  return <Notice kind="warning">{words.taken(firstFew(taken))}</Notice>;
}

/** `isDone`: the table is written. */
export function AstrayNotice({ astray, isDone }: { astray: readonly string[]; isDone?: boolean }) {
  if (astray.length === 0) return null;
  return <Notice kind="warning">{words.astray(firstFew(astray), isDone)}</Notice>;
}
