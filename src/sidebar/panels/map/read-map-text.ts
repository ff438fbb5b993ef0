import { kml } from '@tmcw/togeojson';
import { checkMapText, refuseTooBig } from '../../../../shared/tasks/map/check-map-text';
import { mapFromGeojson } from '../../../../shared/tasks/map/map-from-geojson';
import type { FarmMap } from '../../../../shared/tasks/map/map-model';
import { MapTrouble } from '../../../../shared/tasks/map/map-trouble';
import * as words from './words';

/** A map out of GeoJSON or KML text. Errors: MapTrouble, a sentence for the grower. */
export function readMapText(text: string): FarmMap {
  const checked = checkMapText(text);
  return mapFromGeojson(checked.kind === 'geojson' ? checked.value : geojsonOfKml(checked.xml));
}

/** Refused by its size before a byte is read. */
export async function readMapFile(file: File): Promise<FarmMap> {
  refuseTooBig(file.size);
  return readMapText(await file.text());
}

/** The text has been checked: no DOCTYPE, no entities of its own, not too deep. Only names and places are used. */
function geojsonOfKml(xml: string): unknown {
  const doc = new DOMParser().parseFromString(xml, 'text/xml');
  const broken = doc.querySelector('parsererror');
  if (broken) {
    const why = (broken.querySelector('div')?.textContent ?? broken.textContent ?? '').trim().slice(0, 120);
    throw new MapTrouble(words.brokenKml(why));
  }
  return kml(doc);
}
