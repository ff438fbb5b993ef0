/** The sentences of the bite at the far end and of the fence walk. */
import { ELECTRIC_CAUTION } from '../words';

// Beside the settings
export const VOLTS_NOTE =
  'On its label, or measured at the terminals with the fence taken off. The start value is an illustration.';
export const OHMS_NOTE =
  'Seldom published. From its volts into 500 Ω: 500 × (volts without load ÷ volts at 500 Ω − 1). The start value is an illustration.';
export const WEEDS_NOTE =
  'Of 1000 ft (1 km) of line; less is worse. An illustration: no published figure for growth was found.';
export const PIG_NOTE =
  'Worst case, wet feet and snout; also the load of the IEC test (Dalton, published; IEC, second hand).';
export const ON_FENCE_NOTE =
  'At no point under 2,000 (BUL, published); better 3,000, difficult stock 4,000 to 5,000 (Bioland, all stock, published).';
export const DELIVERED_NOTE =
  'NRCS Iowa publishes 2,000 for sheep and 1,000 for cattle, nothing for pigs: judgement.';
export const ACT_BELOW_NOTE =
  'At no point under 2,000 (BUL, published); better 3,000 (Bioland, all stock, published).';
export const MAKE_UP_NOTE = 'Example make-up; read the label of yours and change the numbers.';

// Look out
export const HEAD_CAUTION = 'Look out: an estimate. Measure the fence.';
export const BITE_CAUTIONS: readonly string[] = [
  'A steady planning estimate. A pulse also meets capacitance, inductance and reflections. Measure with a fence tester at the far end before you trust the fence.',
  ELECTRIC_CAUTION,
];
export const WALK_CAUTION =
  'Switch the energizer off before you mend. Measure the far end and the worst growth.';

// The fence walk
export const NO_READING = 'No reading yet.';
/** "2 walks. Last 6 May: 4100 V, 700 V down since 2 May. Lowest 4100 V on 6 May. None below 3000 V." */
export const walksSoFar = (of: {
  count: number;
  last: string;
  lowestOfLast: number;
  before?: { day: string; change: number } | undefined;
  lowest: number;
  dayOfLowest: string;
  below: number;
  level: number;
}): string =>
  `${of.count} ${of.count === 1 ? 'walk' : 'walks'}. Last ${of.last}: ${of.lowestOfLast} V${of.before ? `, ${changed(of.before.change)} since ${of.before.day}` : ''}. Lowest ${of.lowest} V on ${of.dayOfLowest}. ${of.below || 'None'} below ${of.level} V.`;

function changed(volts: number): string {
  if (volts === 0) return 'no change';
  return volts > 0 ? `${volts} V up` : `${-volts} V down`;
}

export const looksLikeKilovolts = (typed: string, volts: number): string =>
  `${typed} volts is next to nothing. If your tester shows kilovolts (kV), type ${volts}; for a dead fence type 0`;

// What a table is turned down for
export const badLength = (where: string, got: string): string =>
  `${where}: the length of a fence line must be a number above 0, got ${got}. What is no line (a note, say) belongs below or beside the table.`;
export const typedAsValue = (where: string, heading: string, v: string): string =>
  `${where}: ${heading} must be typed as a value, got ${v}`;
export const badDay = (cell: string): string =>
  `${cell}: date must be a date (a date cell, or text such as "2026-04-20")`;
export const badVolts = (cell: string): string => `${cell}: volts must be a number`;

// The next useful task
export const TRAINING_NEXT = '“Train the pigs” before they meet it.';
