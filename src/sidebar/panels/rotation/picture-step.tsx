import { useState } from 'preact/hooks';
import type { WriteDone } from '../../../../shared/contract';
import { blockFingerprint } from '../../../../shared/table/block-fingerprint';
import { type PictureInput, pictureBlock } from '../../../../shared/table/picture-block';
import { Button } from '../../parts/button';
import { freeTabName } from '../../parts/free-tab-name';
import { Notice } from '../../parts/notice';
import { standingBlock } from '../../parts/standing-block';
import { readBook } from '../../parts/use-book';
import { useWork } from '../../parts/use-work';
import { ask } from '../../server';

const PICTURE_NAME = 'SOUNDER_SEASON';
const TAB_NAME = 'Season';

/** Writes the paddock × week picture of the season into the sheet, on a tab of its own. */
export function PictureStep({ input }: { input: Omit<PictureInput, 'corner'> }) {
  const work = useWork();
  const [done, setDone] = useState<WriteDone>();
  const write = (): void =>
    work.start(async () => {
      setDone(undefined);
      setDone(await writePicture(input));
    });
  return (
    <>
      <Button disabled={work.busy} onPress={write}>
        {work.busy ? 'Writing…' : 'Write the season as a picture in cells'}
      </Button>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
      {done && (
        <Notice kind="done">
          The picture stands on “{done.block.tab}”, {done.a1}.
        </Notice>
      )}
    </>
  );
}

/** Over the old picture where there is one: nothing is typed there. Else on a new tab. */
async function writePicture(input: Omit<PictureInput, 'corner'>): Promise<WriteDone> {
  const book = await readBook();
  const old = standingBlock(book, PICTURE_NAME);
  const tab = freeTabName(
    TAB_NAME,
    book.overview.tabs.map(({ name }) => name),
  );
  const corner = old?.info ?? { tab, row: 1, column: 1 };
  return ask('writeBlock', {
    name: PICTURE_NAME,
    ...pictureBlock({ ...input, corner: { tab: corner.tab, row: corner.row, column: corner.column } }),
    ...(old
      ? { place: { at: 'own' }, expects: blockFingerprint(old.values, old.formulas) }
      : { place: { at: 'new-tab', tab } }),
  });
}
