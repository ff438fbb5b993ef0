/** Warnings that more than one function carries, in the same words. */

export const ENERGIZER_CAUTIONS = [
  'The energizer’s manual and the local code decide; this is a rule of thumb for planning.',
  'Put the energizer’s earth at least 10 m (33 ft) from any utility, telephone or building earth.',
  'Never connect two energizers to one fence, and never put barbed wire live.',
] as const;

export const PARASITE_CAUTION =
  'Rest for the forage is not rest from parasites: roundworm eggs live in the soil for at least 9 years.';

export const GROWING_PIGS_CAUTION =
  'Made for growing pigs on full feed, 45 to 300 lb (20 to 135 kg). Sows on a ration, and sows with litters, differ.';

export const HEAT_CAUTION =
  'Heat kills pigs: over 100 lb they are stressed from about 80 °F (27 °C) in humid air. Give shade, water at all times and a wallow or sprinkler.';
