import { MOST_DEPTH, MOST_FILE_BYTES } from './limits';
import { MapTrouble } from './map-trouble';
import { jsonDepth, xmlDepth } from './nesting-depth';

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
  if (text === '') throw new MapTrouble('The file is empty. Choose a GeoJSON or KML file.');
  if (text.startsWith('PK')) {
    throw new MapTrouble(
      'This is a zipped file (KMZ or similar). Save it as KML, or unzip it and choose the .kml file inside.',
    );
  }
  if (text.includes('\u0000')) {
    throw new MapTrouble('This is not a text file. Choose a GeoJSON or KML file saved as UTF-8 text.');
  }
  if (text.startsWith('<')) return { kind: 'kml', xml: checkedXml(text) };
  if (text.startsWith('{') || text.startsWith('[')) return { kind: 'geojson', value: checkedJson(text) };
  throw new MapTrouble(
    `This is neither GeoJSON, which begins with {, nor KML, which begins with <. It begins with "${text.slice(0, 20)}".`,
  );
}

/** Refuses before reading, by the size that the browser tells. */
export function refuseTooBig(bytes: number): void {
  if (bytes <= MOST_FILE_BYTES) return;
  throw new MapTrouble(
    `The file is ${megabytes(bytes)} MB; the most that is read is ${megabytes(MOST_FILE_BYTES)} MB. Save only the paddocks, without pictures and tracks, and try again.`,
  );
}

function megabytes(bytes: number): string {
  return String(Math.round(bytes / 100_000) / 10);
}

function checkedJson(text: string): unknown {
  refuseTooDeep(jsonDepth(text));
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new MapTrouble(
      `This begins like GeoJSON but is broken: ${(error as Error).message}. Export it again from your map program.`,
    );
  }
}

function checkedXml(text: string): string {
  if (/<!\s*(DOCTYPE|ENTITY)/i.test(text)) {
    throw new MapTrouble(
      'This file has a DOCTYPE or entities of its own, which KML does not need and which can hide harm. It was not read. Export the paddocks again as plain KML.',
    );
  }
  refuseTooDeep(xmlDepth(text));
  if (!/<([A-Za-z_][\w.-]*:)?(kml|Document|Folder|Placemark)[\s>/]/.test(text)) {
    throw new MapTrouble('This is XML but not KML: no <kml> and no <Placemark> in it. Choose a KML file.');
  }
  return text;
}

function refuseTooDeep(depth: number): void {
  if (depth <= MOST_DEPTH) return;
  throw new MapTrouble(
    `This file nests ${depth} levels deep; a map of paddocks needs fewer than ${MOST_DEPTH}. It was not read. Export the paddocks again.`,
  );
}
