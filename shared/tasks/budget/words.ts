/** The sentences of the budget. */
import { counted } from '../../plan/words';

// Where the stays come from
export const originOfRotation = (tab: string): string =>
  `Stays of the table on “${tab}”. Planned anew? Write this anew.`;
export const originOfLists = (daysOn: string): string =>
  `Each group takes the list in its order, ${daysOn} days in each: no plan.`;
export const earlierStays = (tab: string, last: string): string =>
  `The budget on “${tab}” is of an earlier season, up to ${last}. It stays there as a record; the new one gets a place of its own.`;
export const NO_STAY = 'There is no stay to count with.';
export const tooManyStays = (most: number): string => `More than ${most} stays: choose longer ones.`;
export const NO_SEASON = 'The season needs a first and a last day.';
export const badDaysOn = (typed: string): string =>
  `Days in a paddock must be a whole number from 1 up, got ${typed}.`;
export const badMove = (tab: string, row: number): string =>
  `${tab}, row ${row}: the move must have a date, days, head, weight and area`;
export const stayLeftOut = (group: string, stays: number, from: string, why: string): string =>
  `${group}: ${counted(stays, 'stay')} from ${from} on ${stays === 1 ? 'is' : 'are'} left out of every figure. ${why}`;
export const growthUnknown = (pigs: string, cell: string | undefined): string =>
  `Without a daily gain growth is known for pigs of ${pigs} only: type the gain into ${cell ?? 'the group list'}, or an earlier day to leave.`;
export const notGrowing = (pigs: string): string =>
  `The figures are for growing pigs of ${pigs}: type an earlier day to leave into the group list.`;

// Beside the figures
export const WASTE_NOTE = 'With 5 % waste (NRC 2012, from memory).';
export const ORDINARY_DAY = 'On an ordinary day.';
export const HOT_DAY = 'On a hot day; see the settings.';
export const FLOOR_NOTE = 'Bedded, every pig lying flat.';
export const CELLS_SAY_WHY = 'Their cells say why. They are missing in every sum above and below.';
export const PRICE_NOTE = 'At the price in the settings.';

// Beside the settings
export const LIMIT_NOTE = 'Yours: local nutrient rules, soil test or advisor. Blank: not checked.';
export const WARM_NOTE =
  'Water to have there, a quarter for spill (judgement), by air temperature (Mount 1971, published).';
export const HOT_NOTE = 'Finishers suffer from about 70 °F (21 °C) on (UF/IFAS, published).';
export const OUTDOORS_NOTE =
  'Outdoor pigs need about 15 % more energy in Northern Europe (Edwards 2003, published).';
export const LYING_NOTE =
  'Times weight in kg to the power 0.67. 0.047: every pig lies flat (Petherick and Baxter 1981, second hand).';
export const FEED_PRICE_NOTE = 'Yours, for the amount below: a bag, a ton, a pound. Blank: no cost.';
export const PRICE_FOR_NOTE = 'A US ton is 2,000 lb; a bag says what it holds.';
export const FENCE_COST_NOTE = 'Yours; the list of fence materials ends with what to buy.';

// Look out
export const HEAD_CAUTION = 'Look out: water and shade come first.';
export const BUDGET_CAUTIONS: readonly string[] = [
  'For growing pigs on full feed. In heat, from about 70 °F (21 °C) on, shade, a wallow and water come first. Check drinkers twice a day: a day without water, less in heat, can poison pigs with salt; give it back slowly, over hours, and call the vet.',
  'Nutrients are an average, high for heavy pigs, and spread evenly here: near feeders and shelters there are many times more. Local nutrient and water rules decide.',
];

// The next useful task
export const FENCE_NEXT = '“List the fence materials” says what the fence costs.';
