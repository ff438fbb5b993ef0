/** Sources that more than one function rests on, in the same words. */
import type { SourceUse } from './define';

export const ENERGIZER_CAUTIONS_USE: SourceUse = {
  source: 'iecFenceAnnex',
  certainty: 'published, second hand',
  covers: 'cautions',
};

export const PARASITE_USE: SourceUse = {
  source: 'katakam2016',
  certainty: 'published, second hand',
  covers: 'caution on parasites',
};

export const HEAT_USE: SourceUse = { source: 'pigHeat', certainty: 'published', covers: 'caution on heat' };

export const SEVERAL_GROUPS_USE: SourceUse = {
  source: 'contract',
  certainty: 'definition',
  covers: 'several groups in one rotation',
};

export const GROWTH_USES: readonly SourceUse[] = [
  { source: 'nrc2012', certainty: 'from memory', covers: 'daily gain from 25 kg on, where none is given' },
  {
    source: 'nrc2012',
    certainty: 'from memory',
    covers: 'daily gain below 25 kg; where one weight band ends and the next begins',
    unguarded: [
      'EDGES_KG 5',
      'EDGES_KG 7',
      'EDGES_KG 11',
      'EDGES_KG 25',
      'EDGES_KG 50',
      'EDGES_KG 75',
      'EDGES_KG 135',
      'GAINS_KG_PER_DAY 0.21',
      'GAINS_KG_PER_DAY 0.335',
      'GAINS_KG_PER_DAY 0.585',
    ],
  },
];

export const GROWING_LIMITS_USE: SourceUse = {
  source: 'judgement',
  certainty: 'judgement',
  covers: '5 to 160 kg as limits',
  unguarded: ['GROWING_LIGHTEST_KG 5', 'GROWING_HEAVIEST_KG 160'],
};
