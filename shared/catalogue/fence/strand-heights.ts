import { strandHeights } from '../../core/fence/strand-heights';
import { define } from '../define';
import { UNITS_PARAM, WEIGHT_PARAM } from '../params';

export const STRAND_HEIGHTS = define({
  name: 'STRAND_HEIGHTS',
  topic: 'fence',
  summary: 'Heights of the live wires for a pig of that weight, lowest first.',
  formula:
    'from 45 lb (20.4 kg): two at 10 and 18 in, three at 8, 16 and 24 in; lighter: three at 6, 12 and 18 in, two the lower ones; a single wire at nose height, 18 in at most',
  params: [
    WEIGHT_PARAM,
    {
      kind: 'number',
      name: 'strands',
      unit: 'wires',
      help: '1, 2 or 3 wires; where left out 2, and 3 below 45 lb (20.4 kg).',
      optional: true,
      min: 1,
      max: 3,
      whole: true,
    },
    UNITS_PARAM,
  ],
  result: { kind: 'open-row', label: 'height', quantity: 'height' },
  sources: [
    {
      source: 'extensionHogFence',
      certainty: 'published, second hand',
      covers: '10 and 18 in for growing and finishing pigs and sows; lowest wire 6 in with young pigs',
    },
    { source: 'fibl2019', certainty: 'published', covers: 'the ranges that these heights lie in' },
    {
      source: 'extensionWater',
      certainty: 'judgement',
      covers: 'growing pigs begin at 45 lb, a class limit for water',
    },
    {
      source: 'practice',
      certainty: 'common practice, no source',
      covers: 'pigs go under rather than over',
    },
    {
      source: 'practice',
      certainty: 'common practice, no source',
      covers: 'third wire for young pigs',
      unguarded: ['YOUNG_METERS 18'],
    },
    {
      source: 'boarFenceTrial',
      certainty: 'published',
      covers: 'second wire for young pigs, third for larger ones, as against wild boar',
    },
    {
      source: 'petherick1983',
      certainty: 'published',
      covers: 'nose height grows with the cube root of weight',
    },
    {
      source: 'countrySmallholder',
      certainty: 'published',
      covers: 'weaner wire near 8 in, which the nose height meets',
    },
    {
      source: 'judgement',
      certainty: 'judgement',
      covers: 'nose height 0.095 m × ∛kg; single wire at nose height',
    },
    {
      source: 'judgement',
      certainty: 'judgement',
      covers: 'lower two of three wires for larger pigs; three wires for lighter ones',
      unguarded: ['GROWN_THREE_METERS 8', 'GROWN_THREE_METERS 16'],
    },
  ],
  cautions: [
    'Train pigs to the wire before they rely on it. No electric fence holds every pig: near roads and neighbours have a physical fence as well.',
    'Keep the lowest wire clear of soil that pigs throw against it, and check it every day.',
  ],
  examples: [
    { args: [150], gives: [[10, 18]] },
    { args: [400, 2], gives: [[10, 18]] },
    { args: [30], gives: [[6, 12, 18]] },
    { args: [100, 2, 'metric'], gives: [[25.4, 45.72]] },
  ],
  run: strandHeights,
});
