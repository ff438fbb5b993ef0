import type { MapShape, Role } from './map-model';

const WELL = /\b(well|wells|wellhead|borehole|bore|spring|springs)\b/i;
const WATER =
  /\b(water|stream|creek|brook|beck|burn|river|pond|lake|reservoir|ditch|drain|canal|wetland|marsh|lagoon|dugout)\b/i;

/** What a shape probably is, by its name: only a first guess for the grower to correct. */
export function guessRole({ form, name }: Pick<MapShape, 'form' | 'name'>): Role {
  // "Creek field" is a field: an area counts as water only where its name ends in the water.
  if (form === 'area') return endsIn(WATER, name) ? 'water' : 'paddock';
  if (WELL.test(name)) return 'well';
  return WATER.test(name) ? 'water' : 'other';
}

function endsIn(words: RegExp, name: string): boolean {
  return new RegExp(`${words.source}\\s*\\d*$`, 'i').test(name.trim());
}
