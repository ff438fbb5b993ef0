import type { SettingSpec, SettingValues } from '../settings';
import { strandsSetting } from '../strands-setting';
import * as words from './words';

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
    note: words.LIGHTEST_NOTE,
  },
  strandsSetting('Strands', 'pigWeight' satisfies MaterialsKey),
  {
    key: 'groups',
    label: 'Groups that are out at once',
    unit: 'groups',
    start: 1,
    min: 1,
    whole: true,
    note: words.GROUPS_OUT_NOTE,
  },
  {
    key: 'standing',
    label: 'Fence that stands already',
    quantity: 'length',
    start: 0,
    min: 0,
    note: words.STANDS_NOTE,
  },
  {
    key: 'shape',
    label: 'Length of a paddock for each width',
    unit: 'times',
    start: 1.5,
    min: 1,
    max: 10,
    note: words.SHAPE_NOTE,
  },
  {
    key: 'postSpacing',
    label: 'Gap between posts, at most',
    quantity: 'length',
    start: { US: 25, metric: 7.5 },
    above: 0,
    note: words.POST_GAP_NOTE,
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
    note: words.ALLOWANCE_NOTE,
  },
  {
    key: 'rollLength',
    label: 'Wire on a roll',
    quantity: 'length',
    start: { US: 1320, metric: 400 },
    above: 0,
    note: words.ROLL_NOTE,
  },
  {
    key: 'reelLength',
    label: 'Wire a reel holds',
    quantity: 'length',
    start: { US: 660, metric: 200 },
    above: 0,
    note: words.REEL_NOTE,
  },
  {
    key: 'lineInsulators',
    label: 'Insulators a line post and strand',
    unit: 'each',
    start: 0,
    min: 0,
    max: 1,
    whole: true,
    note: words.INSULATORS_SET_NOTE,
  },
  {
    key: 'gates',
    label: 'Openings with gate handles',
    unit: 'gates',
    start: 2,
    min: 0,
    whole: true,
    note: words.OPENINGS_NOTE,
  },
  {
    key: 'netLength',
    label: 'Length of a net',
    quantity: 'length',
    start: { US: 164, metric: 50 },
    above: 0,
    note: words.NET_LENGTH_NOTE,
  },
  {
    key: 'netStrings',
    label: 'Live strings of a net',
    unit: 'strings',
    start: 6,
    min: 1,
    max: 20,
    whole: true,
    note: words.LIVE_STRINGS_NOTE,
  },
  {
    key: 'publicSide',
    label: 'Fence along which the public passes',
    quantity: 'length',
    start: 0,
    min: 0,
    note: words.PUBLIC_NOTE,
  },
  {
    key: 'signSpacing',
    label: 'Gap between warning signs, at most',
    quantity: 'length',
    start: { US: 295, metric: 90 },
    above: 0,
    note: words.SIGN_GAP_NOTE,
  },
  {
    key: 'loadFactor',
    label: 'Growth on the wire',
    unit: 'times',
    start: 1,
    min: 1,
    note: words.GROWTH_NOTE,
  },
  {
    key: 'energizerJoules',
    label: 'Output of your energizer',
    unit: 'J',
    above: 0,
    optional: true,
    note: words.OUTPUT_NOTE,
  },
  {
    key: 'rodLength',
    label: 'Ground rod',
    quantity: 'length',
    start: { US: 6, metric: 1.8 },
    above: 0,
    note: words.ROD_NOTE,
  },
  {
    key: 'rodGap',
    label: 'Between ground rods',
    quantity: 'length',
    start: { US: 10, metric: 3 },
    min: 0,
    note: words.ROD_GAP_NOTE,
  },
  {
    key: 'leadOut',
    label: 'Energizer to fence',
    quantity: 'length',
    start: { US: 50, metric: 15 },
    min: 0,
    note: words.CABLE_NOTE,
  },
  {
    key: 'earthLead',
    label: 'Energizer to first ground rod',
    quantity: 'length',
    start: { US: 33, metric: 10 },
    min: 0,
    note: words.FIRST_ROD_NOTE,
  },
];

export type MaterialsSettings = SettingValues<MaterialsKey>;
