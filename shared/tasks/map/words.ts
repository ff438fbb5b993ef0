/** The sentences of the map. */
// A file or text that is not read
export const EMPTY = 'The file is empty. Choose a GeoJSON or KML file.';
export const ZIPPED =
  'This is a zipped file (KMZ or similar). Save it as KML, or unzip it and choose the .kml file inside.';
export const NOT_TEXT = 'This is not a text file. Choose a GeoJSON or KML file saved as UTF-8 text.';
export const otherKind = (begin: string): string =>
  `This is neither GeoJSON, which begins with {, nor KML, which begins with <. It begins with "${begin}".`;
export const tooLarge = (megabytes: string, most: string): string =>
  `The file is ${megabytes} MB; the most that is read is ${most} MB. Save only the paddocks, without pictures and tracks, and try again.`;
export const brokenGeojson = (why: string): string =>
  `This begins like GeoJSON but is broken: ${why}. Export it again from your map program.`;
export const DOCTYPE =
  'This file has a DOCTYPE or entities of its own, which can hide harm, and was not read. Export the paddocks again as plain KML.';
export const NOT_KML = 'This is XML but not KML: no <kml> and no <Placemark> in it. Choose a KML file.';
export const nestedKml = (depth: number, most: number): string =>
  `This file nests ${depth} levels deep; a map of paddocks needs fewer than ${most}. It was not read. Export the paddocks again.`;
export const NO_SHAPES = 'There are no areas, lines or points in it.';
export const nothingUsable = (why: string): string => `Nothing in this map can be used. ${why}`;
export const otherCoordinates = (system: string): string =>
  `This map uses the coordinate system "${system}". Export it again as latitude and longitude (WGS84, EPSG:4326).`;
export const tooManyShapes = (most: number): string =>
  `This map has more than ${most} shapes. Save only the paddocks and try again.`;
export const tooManyCorners = (most: number): string =>
  `This map has more than ${most} corners. Draw each paddock with a corner only where the fence turns, not as a walked track.`;
export const nestedDeep = (most: number): string => `This map nests more than ${most} levels deep.`;

// What of a map was left out
export const NOT_AN_OBJECT = 'Something in the file is not a map object and was left out.';
export const noList = (kind: string): string => `A ${kind} in the file has no list and was left out.`;
export const noGeometry = (shape: string): string => `${shape} has no geometry and was left out.`;
export const otherShape = (shape: string, kind: string): string =>
  `${shape} is of a kind that is not read (${kind}) and was left out.`;
export const emptyShape = (shape: string): string => `${shape} is empty and was left out.`;
export const badHole = (hole: number, shape: string, why: string): string =>
  `Hole ${hole} in ${shape} was left out: ${why}.`;

// Corners that are typed in the sheet
export const tableGone = (tab: string): string =>
  `The corner table on "${tab}" is gone. Take the corners from a file instead.`;
export const badCorner = (tab: string, cell: string): string =>
  `${tab}!${cell} and the cell beside it must be decimal degrees.`;
export const selectColumns = (width: number): string =>
  `Select two columns, latitude and longitude, or three with the paddock’s name in front. ${width === 1 ? 'One column is' : `${width} columns are`} selected now.`;
export const BLANK_SELECTION = 'The selected cells are blank. Select the corners and try again.';
export const cornersOfOne = (row: number, corners: number, most: number): string =>
  `The paddock typed from row ${row} has ${corners} corners; the most is ${most}.`;
export const manyPaddocks = (paddocks: number, most: number): string =>
  `These are ${paddocks} paddocks; the most is ${most}.`;
export const manyCorners = (corners: number, most: number): string =>
  `These are ${corners} corners; the most is ${most}.`;
export const badDegrees = (cell: string, got: string): string =>
  `${cell} must be decimal degrees such as 44.9537, got ${got}.`;

// Asked and noted in the task
export const ADJOIN_NOTE =
  'Paddocks adjoin where their sides run no farther apart than this for at least 10 ft (3 m). Judgement: lines walked with a hand-held receiver seldom fall together better.';
export const READ_A_MAP = 'Read a map first: a file, a text, or corners in the sheet.';
export const NO_PADDOCK = 'None of the shapes is a paddock. Say above which areas are.';
export const NOT_FOLLOWING =
  'Adjoining paddocks and distances to water and wells do not follow: write the map table anew from your map.';
export const POST_GAP_NOTE =
  'Widest gap between posts. Common practice for pigs, no source: 20 to 25 ft, closer on rough ground.';
export const HEAD_CAUTIONS: readonly string[] = [
  'Look out: slopes take more wire and posts.',
  'How near water pigs may be: local rules.',
];
export const SLOPE_CAUTION =
  'On the map (WGS84 ellipsoid), not along slopes: steep ground takes more wire and posts. Walk the line before you buy.';
export const DISTANCE_CAUTION =
  'Distances are from the nearest point of the paddock, as drawn. Local rules decide how near to water and wells pigs may stand: ask your conservation district or water authority.';
