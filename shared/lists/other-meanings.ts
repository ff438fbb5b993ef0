/** Headings that hold the word of a field but mean something else. Collected by judgement. */
import type { GroupField, PaddockField } from './model';

const OF_ALL =
  /\b(total|totale|totaux|gesamt|insgesamt|totaal|totalt|samlet|group|herd|mob|batch|litter|sounder|bunch|lot|cohort|all|whole|sum|combined|together)\b/;
const OF_ONE =
  /\b(avg|average|mean|each|per|o|ø|gem|gemiddeld\w*|mittel|mittleres|durchschnitt\w*|moy|moyen|medio|promedio|snitt\w*|gns|gennemsnit\w*|medel\w*)\b/;
/** Beginnings or ends of words for a weight: "Schlachtgewicht", "Slaktvikt", "LW". */
export const WEIGHT_STEMS = [
  'weight',
  'wt',
  'lw',
  'lwt',
  'liveweight',
  'gewicht',
  'poids',
  'peso',
  'vikt',
  'vaegt',
  'vekt',
];
const WEIGHT = /(\b(wt|lw|lwt|peso|poids)|weight|gewicht|vikt|vaegt|vekt)\b/;
/** At which they are to leave. */
const TARGET =
  /\b(target|works|slaughter|market|finish\w*|final\w*|kill\w*|abattoir|butcher|sale|leaving|schlacht\w*|ziel\w*|end\w*|cible|abattage|objet\w*|meta|matanza|sacrific\w*|obiettiv\w*|macell\w*|abate|slacht\w*|streef\w*|eind\w*|slakt\w*|slut\w*|slagt\w*)/;
/** At which they came. */
const ENTRY =
  /\b(entry|arrival|arrived|purchase|bought|wean\w*|entrada|inici\w*|inizi\w*|arrivo|arrivee|entree|achat|compra|ingres\w*|einstall\w*|ankunft|zukauf|aankomst|opzet|aankoop|indsaet\w*|indkob|insatt\w*|insattning\w*|inkop\w*|innkjop|innsett\w*)\b/;
const NOW =
  /\b(now|current|latest|today|actual|actuel|aktuell\w*|jetzt|heute|attuale|atual|nu|na|huidig\w*)\b/;
const NOT_LIVE = /\b(birth|carcass|carcase|hanging|dressed|dead|deadweight|feed|gain|loss)\b/;

const OTHER: Readonly<Partial<Record<PaddockField | GroupField, RegExp>>> = {
  /** "Rent per acre", "Pigs/ac": not the area of a paddock. */
  area: /\b(per (?!paddock|field|plot|pasture|strip)\w+|rent|cost|price|stocking|density|rate|pigs (acre|hectare))\b/,
  head: new RegExp(`\\b(lost|died|dead|deaths|sold|culled)\\b|${ENTRY.source}`),
  weight: NOT_LIVE,
  /** The day they came or were born. */
  weighedOn: new RegExp(
    `${ENTRY.source}|\\b(born|birth|farrow\\w*|geb\\w*|nes?|nati|nascid\\w*|nacid\\w*|fodd\\w*|fodt)\\b`,
  ),
  untilWeight: NOT_LIVE,
  /** A gain of another time than a day or a week, or feed for it. */
  dailyGain: /\b(total|month|monthly|year|yearly|annual|since|date|feed|cost|ratio|conversion)\b/,
};

/** Whether a heading, in plain lower-case words, is no heading of a field although it holds a word of it. */
export function meansOther(field: PaddockField | GroupField, words: string): boolean {
  const isWeight = field === 'weight' || field === 'untilWeight';
  const isOther =
    isWeight && (isWeightOfAll(words) || (field === 'weight' && weightSense(words) === 'target'));
  return isOther || (OTHER[field]?.test(words) ?? false);
}

/** "Total weight", "group weight": of all pigs together, never one pig's. "Group average weight" is one pig's. */
export function isWeightOfAll(words: string): boolean {
  return WEIGHT.test(words) && OF_ALL.test(words) && !OF_ONE.test(words);
}

/** Which weight a heading means, in plain lower-case words: of now, at entry, to leave at; "mean" alone says only whose. */
export function weightSense(words: string): 'now' | 'entry' | 'target' | 'mean' | undefined {
  if (!WEIGHT.test(words)) return OF_ONE_ALONE.test(words) ? 'mean' : undefined;
  if (NOT_LIVE.test(words)) return undefined;
  if (TARGET.test(words)) return 'target';
  if (ENTRY.test(words)) return 'entry';
  return NOW.test(words) ? 'now' : undefined;
}

/** Words for a mean, which alone are that of a weight; "LG" is short for Lebendgewicht. */
export const MEAN_WORDS =
  'avg average mean o schnitt durchschnitt gem gemiddeld gemiddelde moy moyenne prom promedio media gns snitt medel'.split(
    ' ',
  );
const OF_ONE_ALONE = new RegExp(`^((kg|lbs?) )?(${MEAN_WORDS.join('|')}|(o )?lg)$`);
