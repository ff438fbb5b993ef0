/** The sentences of the page of the herd log. */
export const HEAD_NOTE = 'Sold, died, joined: how many there are now. 0 when the last has gone.';
export const HOW_READ = 'How your group list is read';
export const SPLIT_TITLE = 'Split, joined, and the first row of a group';
export const SPLIT_OR_JOINED =
  'Split: put the new group into your list, in from that day, and say here what is left of the old one. Joined: let one leave in the list on that day, and say here how many the other is.';
export const nowIs = (group: string, head: number, weight: number, unit: string, weighedOn: string): string =>
  `${group}: ${head} head, about ${weight} ${unit} each; weighed last on ${weighedOn}.`;
