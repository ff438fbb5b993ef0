/** The sentences of the herd log. */
export const ONE_ROW = 'A row for each change of head or weight. Head 0: the last has gone.';
export const COUNTS_FROM = 'From its first row on this log counts for a group, not your list.';
export const FIRST_ROW =
  'The first row of a group comes from your list. From then on this log counts, and a change in the list changes nothing that is past.';
export const NO_GROUP_LIST =
  'There is no group list in this file yet: the log begins from it. “Plan the moves” says what such a list needs.';
export const headMust = (most: number, got: string): string =>
  `Head must be a whole number from 0 to ${most}, got ${got}.`;
/** Of what is typed into the log itself. */
export const HEAD_MUST = 'head must be a whole number, 0 or more';
export const weightLeast = (least: number, unit: string): string =>
  `weight must be that of one pig, ${least} ${unit} or more`;
export const weightMust = (least: string, most: string, got: string): string =>
  `The weight must be that of one pig: from ${least} to ${most}, got ${got}.`;
export const NEEDS_DAY = 'The change needs a day.';
export const writeAnew = (tables: string): string =>
  `Head and weight of the herd log are not looked up everywhere yet. Write anew: ${tables}.`;
export const notListed = (cell: string, group: string): string =>
  `${cell}: “${group}” is not in the group list, so nothing follows from it. If it has a new name there, “Keep the herd log” asks, and writes it.`;
export const answerRenamed = (question: string): string =>
  `${question} Answer it first: the log counts for a group by its name.`;
export const beforeItCame = (cell: string, day: string, group: string, came: string): string =>
  `${cell}: ${day} lies before ${group} came in on ${came}.`;
export const noHead = (group: string, day: string): string =>
  `${group} has no head from ${day} on by the herd log: it leaves on that day.`;

// The next useful task
export const PLAN_NEXT = '“Plan the moves” with these heads and weights.';
