import type { SettingSpec, SettingValues } from '../settings';

export type MaterialsKey =
  | 'pigWeight'
  | 'strands'
  | 'groups'
  | 'standing'
  | 'shape'
  | 'postSpacing'
  | 'spares'
  | 'allowance'
  | 'rollLength'
  | 'reelLength'
  | 'lineInsulators'
  | 'gates'
  | 'netLength'
  | 'netStrings'
  | 'publicSide'
  | 'signSpacing'
  | 'loadFactor'
  | 'energizerJoules'
  | 'rodLength'
  | 'rodGap'
  | 'leadOut'
  | 'earthLead';

/** The materials list's own settings: what the needs are counted with. */
export const MATERIALS_SETTINGS: readonly SettingSpec<MaterialsKey>[] = [
  {
    key: 'pigWeight',
    label: 'Weight of the lightest pig',
    quantity: 'mass',
    start: { US: 50, metric: 23 },
    above: 0,
    note: 'Sets the wire heights.',
  },
  {
    key: 'strands',
    label: 'Strands',
    unit: 'wires',
    start: 2,
    min: 1,
    max: 3,
    whole: true,
    note: 'Two for growing pigs and sows (extension FAQ, second hand); three under 45 lb (judgement).',
  },
  {
    key: 'groups',
    label: 'Groups that are out at once',
    unit: 'groups',
    start: 1,
    min: 1,
    whole: true,
    note: 'Each leapfrogs with its own set; counts only where the fence moves with the pigs.',
  },
  {
    key: 'standing',
    label: 'Fence that stands already',
    quantity: 'length',
    start: 0,
    min: 0,
    note: 'Taken off the line to put up; it still loads the energizer.',
  },
  {
    key: 'shape',
    label: 'Length of a paddock for each width',
    unit: 'times',
    start: 1.5,
    min: 1,
    max: 10,
    note: 'Only where the list holds areas and no sides: judgement. Long thin paddocks take more fence; up to 4 is advised (Irish Farmers Journal, published).',
  },
  {
    key: 'postSpacing',
    label: 'Gap between posts, at most',
    quantity: 'length',
    start: { US: 25, metric: 7.5 },
    above: 0,
    note: 'Step-in posts for pigs 20 to 25 ft (6 to 7.5 m), closer on uneven ground: from memory.',
  },
  {
    key: 'spares',
    label: 'Spare posts and insulators',
    unit: '%',
    start: 5,
    min: 0,
    max: 100,
    note: 'Judgement.',
  },
  {
    key: 'allowance',
    label: 'Wire allowance',
    unit: '%',
    start: 10,
    min: 0,
    max: 100,
    note: 'For knots, ends, corners and uneven ground: judgement.',
  },
  {
    key: 'rollLength',
    label: 'Wire on a roll',
    quantity: 'length',
    start: { US: 1320, metric: 400 },
    above: 0,
    note: 'See the label of the roll.',
  },
  {
    key: 'reelLength',
    label: 'Wire a reel holds',
    quantity: 'length',
    start: { US: 660, metric: 200 },
    above: 0,
    note: 'See the reel; with one reel a strand of each paddock, moving is quickest.',
  },
  {
    key: 'lineInsulators',
    label: 'Insulators a line post and strand',
    unit: 'each',
    start: 0,
    min: 0,
    max: 1,
    whole: true,
    note: '0 for step-in posts with lugs, 1 for rods and steel posts.',
  },
  {
    key: 'gates',
    label: 'Openings with gate handles',
    unit: 'gates',
    start: 2,
    min: 0,
    whole: true,
    note: 'Trained pigs may refuse to cross where a wire stood: plan openings (common practice, no source).',
  },
  {
    key: 'netLength',
    label: 'Length of a net',
    quantity: 'length',
    start: { US: 164, metric: 50 },
    above: 0,
    note: 'See the net. Nets of 164 ft (50 m) and 100 ft are often sold: common practice, no source.',
  },
  {
    key: 'netStrings',
    label: 'Live strings of a net',
    unit: 'strings',
    start: 6,
    min: 1,
    max: 20,
    whole: true,
    note: 'Count yours, without a dead one at the bottom (start: judgement). Each loads the energizer like a fence of its own: Univ. of Maine counts every strand (published); that a net leaks as much: judgement.',
  },
  {
    key: 'publicSide',
    label: 'Fence along which the public passes',
    quantity: 'length',
    start: 0,
    min: 0,
    note: 'Roads, paths and rights of way.',
  },
  {
    key: 'signSpacing',
    label: 'Gap between warning signs, at most',
    quantity: 'length',
    start: { US: 295, metric: 90 },
    above: 0,
    note: 'At most 90 m (295 ft) by a UK-style code of practice and an Australian safety sheet (published); the IEC text says "frequent intervals". Local rules decide.',
  },
  {
    key: 'loadFactor',
    label: 'Growth on the wire',
    unit: 'times',
    start: 1,
    min: 1,
    note: '1 J of output per mile of fence line (Gerrish, published); 2 to 3 times that for heavy growth is common practice, no source.',
  },
  {
    key: 'energizerJoules',
    label: 'Output of your energizer',
    unit: 'J',
    above: 0,
    optional: true,
    note: 'Blank: the joules needed. The ground rods follow the energizer that is really there.',
  },
  {
    key: 'rodLength',
    label: 'Ground rod',
    quantity: 'length',
    start: { US: 6, metric: 1.8 },
    above: 0,
    note: 'Galvanised, 6 to 8 ft (NRCS Virginia 382, published).',
  },
  {
    key: 'rodGap',
    label: 'Between ground rods',
    quantity: 'length',
    start: { US: 10, metric: 3 },
    min: 0,
    note: '10 ft apart (NRCS Virginia 382, published).',
  },
  {
    key: 'leadOut',
    label: 'Energizer to fence',
    quantity: 'length',
    start: { US: 50, metric: 15 },
    min: 0,
    note: 'High-voltage insulated cable, never ordinary household cable.',
  },
  {
    key: 'earthLead',
    label: 'Energizer to first ground rod',
    quantity: 'length',
    start: { US: 33, metric: 10 },
    min: 0,
    note: 'Rods stay at least 10 m (33 ft) from utility and telephone earths (IEC installation annex, second hand).',
  },
];

export type MaterialsSettings = SettingValues<MaterialsKey>;
