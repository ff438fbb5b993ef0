/** Wires to choose from. Their make-up is stated, their resistance is calculated from it (WIRE_OHMS). */
import type { Metal } from '../../tables/resistivity';
import * as words from './words';

export interface Strand {
  readonly metal: Metal;
  readonly diameterMeters: number;
  readonly wires: number;
}

export interface Wire {
  readonly name: string;
  /** One or two kinds of strand side by side. */
  readonly strands: readonly Strand[];
  readonly note: string;
}

const mm = (millimeters: number): number => millimeters / 1000;
const stainless = (wires: number, millimeters: number): Strand => ({
  metal: 'stainless',
  diameterMeters: mm(millimeters),
  wires,
});
const copper = (wires: number, millimeters: number): Strand => ({
  metal: 'copper',
  diameterMeters: mm(millimeters),
  wires,
});

/** What most pig fence is made of, and the strings of a net, by whose name a line is known as a net. Judgement. */
export const COMMON_WIRE = 'Polywire, 6 stainless and 3 copper';
export const NET_STRING = 'Netting, 3 stainless a string';

/** Steel diameters: US steel wire gauge, published table; 12.5 gauge between 12 and 13. */
export const WIRES: readonly Wire[] = [
  { name: 'Polywire, 3 stainless', strands: [stainless(3, 0.15)], note: words.MAKE_UP_NOTE },
  { name: 'Polywire, 6 stainless', strands: [stainless(6, 0.2)], note: words.MAKE_UP_NOTE },
  { name: 'Polywire, 9 stainless', strands: [stainless(9, 0.2)], note: words.MAKE_UP_NOTE },
  {
    name: COMMON_WIRE,
    strands: [stainless(6, 0.2), copper(3, 0.25)],
    note: words.MAKE_UP_NOTE,
  },
  {
    name: 'High-tensile steel, 12.5 gauge',
    strands: [{ metal: 'high-tensile steel', diameterMeters: mm(2.515), wires: 1 }],
    note: 'Resistivity from memory.',
  },
  {
    name: 'Mild steel, 14 gauge',
    strands: [{ metal: 'mild steel', diameterMeters: mm(2.032), wires: 1 }],
    note: 'Published resistivity.',
  },
  {
    name: 'Mild steel, 17 gauge',
    strands: [{ metal: 'mild steel', diameterMeters: mm(1.372), wires: 1 }],
    note: 'Published resistivity.',
  },
  { name: NET_STRING, strands: [stainless(3, 0.15)], note: words.MAKE_UP_NOTE },
];
