import type { MapShape, Role } from './map-model';

const WELL = /\b(well|wells|wellhead|borehole|bore|spring|springs)\b/i;
const OPEN_WATER =
  /\b(stream|creek|brook|beck|burn|river|pond|lake|reservoir|ditch|drain|canal|wetland|marsh|lagoon|dugout)\b/i;
const WATER = new RegExp(`${OPEN_WATER.source}|\\bwater\\b`, 'i');
/** What brings water to the pigs is no water to stay away from: "Water line to Far", "hose", "trough". */
const SUPPLY =
  /\b((water|well|supply|spring)[ -]?(lines?|pipes?|mains?|points?|taps?)|pipes?|pipelines?|hoses?|troughs?|tanks?|hydrants?|waterers?|drinkers?|standpipes?)\b/i;

/** What a shape probably is, by its name: only a first guess for the grower to correct. */
export function guessRole({ form, name }: Pick<MapShape, 'form' | 'name'>): Role {
  // "Creek field" is a field: an area counts as water only where its name ends in the water.
  if (form === 'area') return endsIn(WATER, name) ? 'water' : 'paddock';
  // "Tank Creek" and "Spring Creek" are creeks: where in doubt, the distance is shown.
  if (form === 'line' && OPEN_WATER.test(name)) return 'water';
  if (SUPPLY.test(name)) return 'other';
  if (WELL.test(name)) return 'well';
  return WATER.test(name) ? 'water' : 'other';
}

function endsIn(words: RegExp, name: string): boolean {
  return new RegExp(`(${words.source})\\s*\\d*$`, 'i').test(name.trim());
}
