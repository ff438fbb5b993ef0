/** The sentences of the page about today’s page. */
export const TAB_FOR_PHONE =
  'A tab for the phone. It follows the rotation table by itself, also without this page.';
export const WHAT_STANDS =
  'Where each group stands, what is next and when, what is late, water and feed of the day, what to carry.';
export const BOXES =
  'Each group has a box “Moved”. Tick it on the day the group has moved: the day goes into Moved in of its next move, and the tick goes. Where nobody can say which move is meant, a sentence stands beside the box and nothing is written.';
