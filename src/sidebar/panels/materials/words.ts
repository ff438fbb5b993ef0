/** The sentences of the page of fence materials. */
// The land
export const rectanglesAssumed = (paddocks: string): string =>
  `${paddocks} with an area but no sides: a rectangle is assumed, see “Length of a paddock for each width”.`;
export const TOUCHING_NAMED = 'Which ones touch, your column of adjoining paddocks says.';
export const TOUCHING_NEXT = 'Each paddock is taken to touch the next one in the list.';
export const SHORTER_SIDE = 'The shorter of the two sides counts as shared.';

// What it comes to
export const longestSet = (paddocks: number, inTurn: boolean): string =>
  `the longest ${paddocks} in a row, as ${inTurn ? 'the rotation goes' : 'your list goes'}`;
export const TAKEN_TO_TOUCH =
  'Each paddock is taken to touch the next in your list; if not, say so under “Where paddocks touch”.';
export const NOTHING_TO_BUY = 'Nothing left to buy.';
export const TYPE_PRICES = 'Type your prices below, and see the cost.';
export const outerFence = (length: string): string => `Outer fence ${length}, round all paddocks together.`;
export const dividingFence = (length: string): string =>
  `Dividing fence ${length}, shared sides counted once.`;
export const wire = (length: string): string => `Wire ${length}, all strands, with the allowance.`;
export const wireHeights = (heights: string, unit: string): string =>
  `Wires at ${heights} ${unit} above ground.`;
export const energizers = (energizers: string, joules: string, length: string): string =>
  `${energizers}, one for each fence that stands apart, of ${joules} J or more: each has ${length} under voltage.`;
