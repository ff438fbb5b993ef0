/** The sentences of the planner, and how numbers and lists stand in a sentence. */
const SMALL = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** A count as it stands in a sentence: in words up to ten. */
export function countInWords(n: number): string {
  return SMALL[n] ?? String(n);
}

/** "1 day", "3 days". */
export function counted(n: number, one: string, many = `${one}s`): string {
  return `${n} ${n === 1 ? one : many}`;
}

/** The same with a capital, to begin a sentence. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "a", "a or b", "a, b or c"; of two or more parts. */
export function orList(parts: readonly string[]): string {
  if (parts.length < 2) return parts.join('');
  return `${parts.slice(0, -1).join(', ')} or ${parts[parts.length - 1]}`;
}

// How good the plan is
export const everyRest = (isLimited: boolean): string =>
  `Every paddock gets the rest it is due${isLimited ? ', and the ground limit is kept' : ''}.`;
export const restShort = (moves: number, days: number): string =>
  `Rest falls short on ${counted(moves, 'move')}, ${counted(days, 'day')} at most.`;
export const overLimit = (days: number, stays: number): string =>
  `The ground carries more than its limit on ${counted(days, 'day')} in ${counted(stays, 'stay')}.`;
export const stayTooLong = (days: number): string =>
  `No move day comes within the longest stay: stays are ${counted(days, 'day')} longer in all.`;
export const typedTooLong = (group: string, paddock: string, days: number, longest: number): string =>
  `The ${counted(days, 'day')} of ${group} in ${paddock} are more than the longest stay of ${counted(longest, 'day')}: they are kept as you typed them.`;
export const bearsTimes = (paddock: string, times: string, day: string): string =>
  `${paddock} bears ${times} times the load of the middle stay in the stay from ${day} on.`;
export const planEnds = (seasonEnd: string, days: number, group: string, leaves: string): string =>
  `The plan ends on ${seasonEnd}, ${counted(days, 'day')} before ${group} leaves (${leaves}): set the season end later to plan those days too.`;
export const movesInAll = (moves: number, far: number): string =>
  `${counted(moves, 'move')} in all${far > 0 ? `, ${far} of them to a paddock that does not adjoin` : ''}.`;
export const wishNotKept = (
  group: string,
  paddock: string | undefined,
  day: string,
  days: number | undefined,
): string =>
  `${group}${paddock ? ` into ${paddock}` : ''} on ${day}${days ? ` for ${counted(days, 'day')}` : ''}, as you typed it, is not kept: no plan was found with it.`;
export const NO_MOVE =
  'There is no move to plan: by the group list no group is on pasture any more. Look at its weights, and at the days or weights on which groups leave.';

// What would mend it
export const morePaddocks = (n: number, like: string): string =>
  `${countInWords(n)} more ${n === 1 ? 'paddock' : 'paddocks'} as large as ${like}`;
export const fewerPigs = (n: number, group: string): string => `${counted(n, 'fewer pig')} in ${group}`;
export const shorterRest = (n: number): string =>
  `a rest ${counted(n, 'day')} shorter (which helps the plan, not the ground)`;
export const longerStays = (days: number): string => `stays of up to ${days} days`;
export const movingAlso = (weekday: string): string => `moving on ${weekday} as well`;
export const keptOut = (group: string): string => `keeping ${group} out of the rotation`;
export const openAllSeason = (paddock: string): string => `opening ${paddock} all season`;
export const useRest = (n: number): string => `Use a rest ${counted(n, 'day')} shorter`;
export const moveAlso = (weekday: string): string => `Move on ${weekday} as well`;
export const wouldClose = (changes: readonly string[]): string =>
  `${capital(orList(changes))} would close it.`;
export const wouldEase = (change: string): string =>
  `${capital(change)} would spread the load: the large paddocks carry more of it.`;
export const wouldMakePlan = (change: string): string => `${capital(change)} would make a plan possible.`;
export const NO_SINGLE_CHANGE =
  'No single change that was tried would close it: more land, fewer pigs or a shorter season together may.';

// Why there is no plan
export const NOT_TOGETHER =
  'No plan was found for all the groups together, though each alone has one. That is not proof that there is none.';
export const NO_PADDOCK = 'There is no paddock.';
export const badLongest = (days: number): string => `The longest stay must be 1 day or more, got ${days}.`;
export const shortestTooLong = (shortest: number, longest: number): string =>
  `The shortest stay, ${counted(shortest, 'day')}, is longer than the longest, ${counted(longest, 'day')}.`;
export const bothStand = (one: string, other: string, paddock: string): string =>
  `${one} and ${other} both stand in ${paddock}.`;
export const tooFewOpen = (day: string, groups: number, paddocks: number): string =>
  `On ${day} there ${groups === 1 ? 'is' : 'are'} ${counted(groups, 'group')} in the rotation and ${counted(paddocks, 'open paddock')}.`;
export const noneAlone = (group: string): string =>
  `Even alone, ${group} finds no row of stays that fits the open dates, the move days and the shortest and longest stay.`;
