import { useState } from 'preact/hooks';
import type { WriteDone } from '../../../../shared/contract';
import { describeChanges } from '../../../../shared/table/describe-changes';
import type { RotationBlockInput } from '../../../../shared/table/model';
import type { RebuildInput } from '../../../../shared/table/rebuild-input';
import { usePage } from '../../page';
import { Notice } from '../../parts/notice';
import { useWork } from '../../parts/use-work';
import type { OldTable } from './old-table';
import { RebuildSection } from './rebuild-section';
import { WriteSection } from './write-section';
import { type Place, writeTable } from './write-table';

interface Props {
  readonly tabs: readonly string[];
  readonly input: Omit<RotationBlockInput, 'corner'>;
  /** Both present where a table stands already. */
  readonly old: OldTable | undefined;
  readonly rebuild: RebuildInput | undefined;
  /** Reads the file again: after writing, and where it turned out to have changed. */
  readonly onReread: () => void;
}

/** Writes the plan and says where it stands. */
export function WriteStep({ tabs, input, old, rebuild, onReread }: Props) {
  const work = useWork();
  const [done, setDone] = useState<WriteDone>();
  const { say } = usePage();
  const write = (place: Place): void =>
    work.start(async () => {
      setDone(undefined);
      try {
        const written = await writeTable(input, place);
        setDone(written);
        say(`The table stands on ${written.block.tab}, ${written.a1}.`);
      } finally {
        onReread();
      }
    });
  return (
    <>
      {old && rebuild ? (
        <RebuildSection
          old={old}
          changes={describeChanges(rebuild, input.plan)}
          work={work}
          onWrite={() => write({ at: 'own', old })}
        />
      ) : (
        <WriteSection tabs={tabs} work={work} onWrite={write} />
      )}
      {done && (
        <Notice kind="done">
          The table stands on “{done.block.tab}”, {done.a1}.
        </Notice>
      )}
      {done?.note && <Notice kind="warning">{done.note}</Notice>}
    </>
  );
}
