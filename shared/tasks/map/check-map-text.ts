import { MOST_DEPTH, MOST_FILE_BYTES } from './limits';
import { MapTrouble } from './map-trouble';
import { jsonDepth, xmlDepth } from './nesting-depth';
import * as words from './words';

export type MapText =
  | { readonly kind: 'geojson'; readonly value: unknown }
  | { readonly kind: 'kml'; readonly xml: string };

/**
 * Tells GeoJSON from KML by its first sign and refuses what must not reach a parser: too big, too deep, zipped,
 * and XML with a DOCTYPE or entities of its own, which could pull in other files or blow up.
 *
 * Errors: MapTrouble with what to do.
 */
export function checkMapText(raw: string): MapText {
  refuseTooBig(raw.length);
  const text = raw.replace(/^\uFEFF/, '').trim();
  if (text === '') throw new MapTrouble(words.EMPTY);
  if (text.startsWith('PK')) {
    throw new MapTrouble(words.ZIPPED);
  }
  if (text.includes('\u0000')) {
    throw new MapTrouble(words.NOT_TEXT);
  }
  if (text.startsWith('<')) return { kind: 'kml', xml: checkedXml(text) };
  if (text.startsWith('{') || text.startsWith('[')) return { kind: 'geojson', value: checkedJson(text) };
  throw new MapTrouble(words.otherKind(text.slice(0, 20)));
}

/** Refuses before reading, by the size that the browser tells. */
export function refuseTooBig(bytes: number): void {
  if (bytes <= MOST_FILE_BYTES) return;
  throw new MapTrouble(words.tooLarge(megabytes(bytes), megabytes(MOST_FILE_BYTES)));
}

function megabytes(bytes: number): string {
  return String(Math.round(bytes / 100_000) / 10);
}

function checkedJson(text: string): unknown {
  refuseTooDeep(jsonDepth(text));
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new MapTrouble(words.brokenGeojson((error as Error).message));
  }
}

function checkedXml(text: string): string {
  if (/<!\s*(DOCTYPE|ENTITY)/i.test(text)) {
    throw new MapTrouble(words.DOCTYPE);
  }
  refuseTooDeep(xmlDepth(text));
  if (!/<([A-Za-z_][\w.-]*:)?(kml|Document|Folder|Placemark)[\s>/]/.test(text)) {
    throw new MapTrouble(words.NOT_KML);
  }
  return text;
}

function refuseTooDeep(depth: number): void {
  if (depth <= MOST_DEPTH) return;
  throw new MapTrouble(words.nestedKml(depth, MOST_DEPTH));
}
