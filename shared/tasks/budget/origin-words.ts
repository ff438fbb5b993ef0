/** The sentence on top of a budget that says where its stays come from. */
import type { WireCell } from '../../contract';

const OF_ROTATION = 'Stays of the rotation table on ';
const OF_LISTS = 'Every group goes through the paddock list in its order, ';

export function originOfRotation(tab: string): string {
  return `${OF_ROTATION}“${tab}”. Write this budget anew after the moves were planned anew.`;
}

export function originOfLists(daysOn: string): string {
  return `${OF_LISTS}${daysOn} days in each: no moves are planned here.`;
}

/** Such a sentence, or one of the warnings below it. */
export function isOriginOrWarning(value: WireCell): boolean {
  return (
    typeof value === 'string' && [OF_ROTATION, OF_LISTS, LOOK_OUT].some((start) => value.startsWith(start))
  );
}

export const LOOK_OUT = 'Look out: ';
