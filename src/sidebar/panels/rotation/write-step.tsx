import type { PointingCell } from '../../../../shared/block/pointing-cells';
import { astrayMoves } from '../../../../shared/table/astray-moves';
import { describeChanges } from '../../../../shared/table/describe-changes';
import type { RotationBlockInput } from '../../../../shared/table/model';
import type { RebuildInput } from '../../../../shared/table/rebuild-input';
import { unitsChanged } from '../../../../shared/table/units-changed';
import type { OldTable } from '../../../../shared/tasks/rotation/old-table';
import { RebuildSection } from './rebuild-section';
import { mergedRotation } from './rotation-request';
import type { Writer } from './use-write';
import { WriteSection } from './write-section';

interface Props {
  readonly tabs: readonly string[];
  readonly input: Omit<RotationBlockInput, 'corner'>;
  /** Both present where a table stands already. */
  readonly old: OldTable | undefined;
  /** Cells of the grower's that point into the table that stands. */
  readonly pointing: readonly PointingCell[];
  readonly rebuild: RebuildInput | undefined;
  /** Last season's table, which gives its name to the new one. */
  readonly replaces: OldTable | undefined;
  readonly writer: Writer;
}

/** A first table, or the one that stands there anew. */
export function WriteStep({ tabs, input, old, pointing, rebuild, replaces, writer }: Props) {
  if (!old || !rebuild) {
    return (
      <WriteSection
        tabs={tabs}
        busy={writer.busy}
        onWrite={(place) => writer.write(input, { ...place, replaces })}
      />
    );
  }
  return (
    <RebuildSection
      old={old}
      units={unitsChanged(old.rotation.settings?.unitSystem, input.settings.unitSystem)}
      changes={describeChanges(rebuild, input.plan)}
      {...keptIn(input, old, pointing)}
      busy={writer.busy}
      onWrite={(putBack) => writer.write(input, { at: 'own', old, putBack })}
    />
  );
}

/** What of the grower's stays in the table or moves below it, and which cells elsewhere will point at other rows. */
function keptIn(input: Props['input'], old: OldTable, pointing: readonly PointingCell[]) {
  const { kept, ids = [] } = mergedRotation(input, old);
  return { kept, astray: astrayMoves(pointing, old.block, ids) };
}
