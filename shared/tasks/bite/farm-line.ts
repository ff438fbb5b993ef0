import type { Book } from '../../block/book';
import { oncePer } from '../../block/once-per';
import { fromInside, toInside } from '../../units/units';
import { buyList } from '../materials/buy-list';
import { fenceType } from '../materials/fence-types';
import { MATERIALS_TASK } from '../materials/materials-task';
import type { Sources } from '../task';
import type { PlannedLine } from './bite-block';
import { innerOhms, labelVolts, VOLTS_WITHOUT_LOAD } from './bite-settings';
import { COMMON_WIRE, NET_STRING } from './wires';

/** What the fence materials say of the farm's fence, for the volts to begin with. */
export interface FarmLine {
  readonly line: PlannedLine;
  /** Inside the energizer that is there, Ω, where its joules are known. */
  readonly ohms: number | undefined;
  readonly sources: Sources;
}

/** The fence that one energizer feeds, as the materials plan it; undefined while they cannot be planned. */
export const farmLine = oncePer((book: Book): FarmLine | undefined => {
  const { plan, sources } = MATERIALS_TASK.read(book, {});
  if (!plan) return undefined;
  const { atATime, kind, settings, units } = plan;
  const length = fromInside(buyList(plan, plan.typed).liveMeters, 'length', units);
  const { isHung } = fenceType(kind);
  const joules = settings.energizerJoules;
  return {
    line: {
      name: atATime.kind === 'set' ? 'Fence of a group' : 'Fence',
      meters: toInside(Math.round(length), 'length', units),
      liveWires: (isHung ? settings.strands : settings.netStrings) ?? 1,
      wire: isHung ? COMMON_WIRE : NET_STRING,
    },
    ohms: joules === undefined ? undefined : innerOhms(VOLTS_WITHOUT_LOAD, labelVolts(joules)),
    sources,
  };
});
