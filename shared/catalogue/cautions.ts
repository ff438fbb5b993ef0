/** Warnings that more than one function carries, in the same words. */

export const ENERGIZER_CAUTIONS = [
  'The energizer’s manual and the local code decide; this is a rule of thumb for planning. Never connect mains to a fence. Keep head, neck and body away from the wire.',
  'Put the energizer’s earth at least 10 m (33 ft) from any supply or telephone earth.',
  'Never two energizers, nor two circuits of one, on a fence; 2.5 m (8 ft) between fences of separate energizers; no live barbed wire.',
] as const;

export const PARASITE_CAUTION =
  'Rest for the forage is not rest from parasites: some roundworm eggs are said to live nine years or more.';

export const GROWING_PIGS_CAUTION =
  'Made for growing pigs on full feed, 45 to 300 lb (20 to 135 kg). Sows on a ration, and sows with litters, differ.';

export const HEAT_CAUTION =
  'Heat kills pigs: finishers and sows begin to suffer near 70 °F (21 °C). Give shade, water at all times and a wallow or sprinkler.';

export const WATER_CAUTION =
  'Never ration water to this number. A day without it, less in heat, can poison pigs with salt: give it back slowly, over hours, and call the vet.';
