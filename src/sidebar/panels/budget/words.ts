/** The sentences of the page of the budget. */
export const mostWater = (ordinary: string, hot: string): string =>
  `Most water, all groups: ${ordinary}, ${hot} when hot.`;
export const shelter = (floor: string): string => `Shelter, largest group: ${floor} of bedded floor.`;
export const feedCosts = (
  feed: string,
  perPig: string,
  pigs: string,
  perUnit: string,
  unit: string,
): string => `The feed costs ${feed}: ${perPig} a pig, of ${pigs}, ${perUnit} for each ${unit} gained.`;
export const fenceCosts = (perPig: string, pigs: string): string => `Fence: ${perPig} a pig, of ${pigs}.`;
export const TYPE_PRICE = 'Type your feed price to see the cost.';
export const NO_LIMIT = 'No limit is typed above: nothing is held against one.';
export const chart = (period: string): string =>
  `Feed by ${period}. The sentence and the table below say the same.`;
export const chartSaid = (period: string, start: string, most: string, first: string, last: string): string =>
  `Most feed in the ${period} from ${start}: ${most}. First ${first}, last ${last}.`;
export const PLAN_FIRST =
  'Plan the moves first for better figures: they know rests, open dates and the ground.';
