import { useMemo } from 'preact/hooks';
import { findPrivate } from '../../../../shared/tasks/share/find-private';
import { markTask } from '../../../../shared/tasks/share/mark-task';
import { useTask } from '../../parts/use-task';
import { WriteBlock } from '../../parts/write-block';
import { PrivateList } from './private-list';
import type { SharedFile } from './use-shared-file';

interface Props {
  readonly shared: SharedFile;
  readonly isOriginal: boolean;
  readonly onReread: () => void;
}

/** In the original, or in a file that is not marked: look only, and mark. Nothing is ever cleared here. */
export function MarkSection({ shared, isOriginal, onReread }: Props) {
  const task = useMemo(() => markTask(shared.mark), [shared.mark]);
  const state = useTask(task, shared.book);
  return (
    <>
      <PrivateList found={findPrivate(shared.contents)} />
      <p>Nothing is cleared in this file. It is cleared in a copy, where this task offers it.</p>
      {isOriginal ? (
        <p>
          <strong>It is marked:</strong> now File &gt; Make a copy, and open this task in the copy.
        </p>
      ) : (
        <>
          <p>
            Mark this file as the original first. The mark is a short text made of the file’s number; the
            number itself is not written.
          </p>
          <WriteBlock task={task} state={state} book={shared.book} onDone={onReread} />
        </>
      )}
    </>
  );
}
