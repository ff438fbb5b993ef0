/** The sentences of the page of the map. */
// Where the corners come from
export const drawnInProgram = (megabytes: number): string =>
  `Drawn in a map program, ${megabytes} MB at most. It is read in this page only.`;
export const TWO_COLUMNS =
  'Two columns, latitude and longitude in decimal degrees such as 44.9537 and −93.0900, with a blank row between paddocks; or three, with the paddock’s name in front. Go round each paddock along its fence. Select them, then:';
export const CORRECTED_TOO = 'With every corner that you corrected in the sheet.';
export const CORNERS_REPLACED =
  'A map table stands in this file. Written anew from here, its corners are replaced, those that you corrected in the sheet too.';
export const brokenKml = (why: string): string =>
  `This KML is broken: ${why}. Export it again from your map program.`;

// The map as it is read
export const drawn = (paddocks: string): string =>
  `Map of ${paddocks} to scale, north up. A table says the same in words.`;
export const CHANGED_IN_SHEET =
  'Names or corners were changed in the map table: they are shown now. To replace them, read your map once more.';
export const DISTANCES_STAY =
  'This map has no water or no well in it: distances that stand in the table stay as they are. Where a fence has moved, read the map file with the water once more.';
export const overlapping = (pairs: string): string =>
  `These lie over one another, so ground is counted twice: ${pairs}.`;
export const crowded = (paddocks: string): string =>
  `${paddocks}: a post is counted at every corner. Draw a corner only where the fence turns.`;
export const holes = (paddock: string, edge: string): string =>
  `${paddock} has a hole in it. Its area is taken off; its edge, ${edge}, is in neither perimeter nor posts. Fence it too if pigs must stay out.`;
export const DRAW_WATER =
  'Draw streams, ponds and wells into the map too (lines, areas or points), and their distances stand here.';
export const LOCAL_RULES =
  'Your local rules say how near to water and wells pigs may stand: ask your conservation district, water authority or well code before you fence.';
