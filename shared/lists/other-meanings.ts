/** Headings that hold the word of a field but mean something else. Collected by judgement. */
import type { GroupField, PaddockField } from './model';

const OF_ALL =
  /\b(total|group|herd|mob|batch|litter|sounder|bunch|lot|cohort|all|whole|sum|combined|together)\b/;
const OF_ONE = /\b(avg|average|mean|each|per)\b/;
const NOT_LIVE = /\b(birth|carcass|carcase|hanging|dressed|dead|deadweight|feed|gain|loss)\b/;

const OTHER: Readonly<Partial<Record<PaddockField | GroupField, RegExp>>> = {
  /** "Rent per acre", "Pigs/ac": not the area of a paddock. */
  area: /\b(per (?!paddock|field|plot|pasture|strip)\w+|rent|cost|price|stocking|density|rate|pigs (acre|hectare))\b/,
  head: /\b(lost|died|dead|deaths|sold|culled)\b/,
  weight: NOT_LIVE,
  untilWeight: NOT_LIVE,
  /** A gain of another time than a day or a week, or feed for it. */
  dailyGain: /\b(total|month|monthly|year|yearly|annual|since|date|feed|cost|ratio|conversion)\b/,
};

/** Whether a heading, in plain lower-case words, is no heading of a field although it holds a word of it. */
export function meansOther(field: PaddockField | GroupField, words: string): boolean {
  const isWeight = field === 'weight' || field === 'untilWeight';
  return (isWeight && isWeightOfAll(words)) || (OTHER[field]?.test(words) ?? false);
}

/** "Total weight", "group weight": of all pigs together, never one pig's. "Group average weight" is one pig's. */
export function isWeightOfAll(words: string): boolean {
  return /\b(weight|wt|liveweight)\b/.test(words) && OF_ALL.test(words) && !OF_ONE.test(words);
}
