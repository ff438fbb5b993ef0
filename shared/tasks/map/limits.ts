/** How much map the page takes. All judgement: far above a farm, far below what makes a page or a sheet crawl. */
export const MOST_FILE_BYTES = 5_000_000;
/** Brackets or elements inside one another. A GeoJSON MultiPolygon in nested collections needs about 12. */
export const MOST_DEPTH = 64;
export const MOST_SHAPES = 500;
/** Each corner becomes a row of live formulas in the sheet. */
export const MOST_CORNERS = 5_000;
/** The check for crossing sides takes the square of an outline's corners. */
export const MOST_CORNERS_OF_ONE = 1_000;
export const LONGEST_NAME = 60;
