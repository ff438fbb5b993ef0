import { useState } from 'preact/hooks';
import { freeTabName } from '../../../../shared/block/free-tab-name';
import { wholeOf } from '../../../../shared/block/read-block';
import { isEarlierPicture, type PictureInput, pictureBlock } from '../../../../shared/table/picture-block';
import { areaFingerprint } from '../../../../shared/tasks/area-fingerprint';
import { findBlock } from '../../../../shared/tasks/find-block';
import { mergeBlock } from '../../../../shared/tasks/merge-block';
import { Button } from '../../parts/button';
import { Notice } from '../../parts/notice';
import type { Book } from '../../parts/use-book';
import { useWork } from '../../parts/use-work';
import { type Written, WrittenNotices } from '../../parts/written-notices';
import { ask } from '../../server';

const PICTURE_NAME = 'SOUNDER_SEASON';
const TAB_NAME = 'Season';

/** Writes the paddock × week picture of the season into the sheet, on a tab of its own. */
interface Props {
  readonly input: Omit<PictureInput, 'corner'>;
  /** Reads the file again; throws where table or lists are no longer those of the plan. */
  readonly readNow: () => Promise<Book>;
}

export function PictureStep({ input, readNow }: Props) {
  const work = useWork();
  const [done, setDone] = useState<Written>();
  const write = (): void =>
    work.start(async () => {
      setDone(undefined);
      setDone(await writePicture(input, await readNow()));
    });
  return (
    <>
      <p class="hint">
        Drawn anew each time; what you typed into it stays. The picture of an earlier season stays too.
      </p>
      <Button disabled={work.busy} onPress={write}>
        {work.busy ? 'Writing…' : 'Write the season as a picture in cells'}
      </Button>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
      {done && <WrittenNotices {...done} />}
    </>
  );
}

/** Over the old picture where there is one of this season. Else on a new tab. */
async function writePicture(input: Omit<PictureInput, 'corner'>, book: Book): Promise<Written> {
  const before = findBlock(book, PICTURE_NAME)?.block;
  const isEarlier = before && isEarlierPicture(before.values, input.settings.rules.seasonStart);
  const old = isEarlier ? undefined : before;
  const tab = freeTabName(
    TAB_NAME,
    book.overview.tabs.map(({ name }) => name),
  );
  const { tab: on, row, column } = old?.info ?? { tab, row: 1, column: 1 };
  const picture = pictureBlock({ ...input, corner: { tab: on, row, column } });
  const { kept, ids: _, ...block } = mergeBlock(PICTURE_NAME, picture, old);
  const done = await ask('writeBlock', {
    name: PICTURE_NAME,
    ...block,
    freezeRows: picture.freezeRows,
    ...(old
      ? { place: { at: 'own', area: wholeOf(old) }, expects: areaFingerprint(book, wholeOf(old)) }
      : { place: { at: 'new-tab', tab }, ...(isEarlier && { replaces: true }) }),
  });
  return { ...done, kept };
}
