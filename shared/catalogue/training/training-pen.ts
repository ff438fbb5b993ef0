import { trainingPen } from '../../core/training/training-pen';
import { ENERGIZER_CAUTIONS } from '../cautions';
import { define } from '../define';
import { HEAD_PARAM, UNITS_PARAM, WEIGHT_PARAM } from '../params';
import { ENERGIZER_CAUTIONS_USE } from '../uses';

export const TRAINING_PEN = define({
  name: 'TRAINING_PEN',
  topic: 'training',
  summary: 'What a square training pen takes: rigid panels outside, one live wire inside.',
  formula:
    'panels a side √(head × area_per_head) ÷ panel_length, rounded up; posts along the closed line at post_spacing; 3 clips and 1 offset insulator a post; live wire once round, at the height of a single wire by STRAND_HEIGHTS',
  params: [
    HEAD_PARAM,
    WEIGHT_PARAM,
    {
      kind: 'number',
      name: 'panel_length',
      quantity: 'length',
      help: 'Length of one rigid panel; 16 ft or 4.9 m where left out.',
      optional: true,
      default: { US: 16, metric: 4.9 },
      above: 0,
    },
    {
      kind: 'number',
      name: 'post_spacing',
      quantity: 'length',
      help: 'Widest gap between posts; a third of a 16 ft (4.9 m) panel where left out.',
      optional: true,
      default: { US: 16 / 3, metric: 4.9 / 3 },
      above: 0,
    },
    {
      kind: 'number',
      name: 'area_per_head',
      quantity: 'floorArea',
      help: 'Floor for each pig; 25 ft² or 2.4 m² where left out, which is a guess of ours.',
      optional: true,
      default: { US: 25, metric: 2.4 },
      above: 0,
    },
    UNITS_PARAM,
  ],
  result: { kind: 'lines', label: 'training pen' },
  sources: [
    {
      source: 'practice',
      certainty: 'common practice, no source',
      covers:
        '16 ft panels, gaps a little over 5 ft, offset insulators about 5 in (13 cm), wire no higher than the noses, in the pen until each pig has met the wire and backed off, watched on at least 3 days, commonly one to two weeks',
    },
    {
      source: 'practice',
      certainty: 'common practice, no source',
      covers: '3 clips a post',
      unguarded: ['CLIPS_PER_POST 3'],
    },
    {
      source: 'judgement',
      certainty: 'judgement',
      covers:
        'area per head (about twice the floor on which a 250 lb pig lies flat); height of a single wire by STRAND_HEIGHTS; 4.9 m panels; one live wire',
    },
    {
      source: 'defraPigCode',
      certainty: 'published',
      covers: 'secure fencing outside the electric wire, so that pigs see it and cannot escape',
    },
    ENERGIZER_CAUTIONS_USE,
  ],
  cautions: [
    'Never drive pigs into the wire, leave them room to step back, and watch the first hour. Use the live wire on rigid panels that cannot touch it.',
    'One live wire is counted. Where two or three hang, as on pasture (STRAND_HEIGHTS), take the live wire and the insulators as often.',
    'Shade, shelter, feed and water are not in this list, and a hot pen needs more room.',
    ...ENERGIZER_CAUTIONS,
  ],
  // Common practice, no source: a pen whose every side is one 16 ft panel takes 4 panels and 12 posts.
  examples: [
    {
      args: [8, 216],
      gives: [
        ['panels', 4, 'panels'],
        ['inside length of a side', 16, 'ft'],
        ['posts', 12, 'posts'],
        ['clips', 36, 'clips'],
        ['offset insulators', 12, 'insulators'],
        ['live wire', 64, 'ft'],
        ['height of a single wire', 17.2, 'in'],
      ],
      tolerance: 0.05,
    },
  ],
  run: trainingPen,
});
