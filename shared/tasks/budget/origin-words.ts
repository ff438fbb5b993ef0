/** The sentence on top of a budget that says where its stays come from. */
const OF_ROTATION = 'Stays of the rotation table on ';
const OF_LISTS = 'Every group goes through the paddock list in its order, ';

export function originOfRotation(tab: string): string {
  return `${OF_ROTATION}“${tab}”. Write this budget anew after the moves were planned anew.`;
}

export function originOfLists(daysOn: string): string {
  return `${OF_LISTS}${daysOn} days in each: no moves are planned here.`;
}

export const LOOK_OUT = 'Look out: ';
