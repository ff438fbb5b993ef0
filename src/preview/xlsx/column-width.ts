/** Column widths: pixels on the page, characters of the default font in a file (Calibri 11: 7 pixels each, 5 beside). */
const PIXELS_PER_CHARACTER = 7;
const PADDING = 5;

export function pixelsOfWidth(characters: number): number {
  return Math.round(characters * PIXELS_PER_CHARACTER + PADDING);
}

export function widthOfPixels(pixels: number): number {
  return (pixels - PADDING) / PIXELS_PER_CHARACTER;
}
