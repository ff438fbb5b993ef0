import { nutrientLoad } from '../../core/herd/nutrient-load';
import { define } from '../define';
import { DAYS_PARAM, HEAD_PARAM, UNITS_PARAM, WEIGHT_PARAM } from '../params';
import { GROWING_LIMITS_USE } from '../uses';

export const NUTRIENT_LOAD = define({
  name: 'NUTRIENT_LOAD',
  topic: 'pigs',
  summary: 'Nitrogen, phosphorus and potassium that a stay leaves on the ground.',
  formula: '0.54, 0.09 and 0.24 lb a day per 1000 lb of liveweight × head × weight × days ÷ area; elemental',
  params: [
    HEAD_PARAM,
    WEIGHT_PARAM,
    DAYS_PARAM,
    { kind: 'number', name: 'area', quantity: 'area', help: 'Area of the paddock.', above: 0 },
    UNITS_PARAM,
  ],
  result: {
    kind: 'row',
    columns: [
      { label: 'nitrogen (N)', quantity: 'massPerArea' },
      { label: 'phosphorus (P)', quantity: 'massPerArea' },
      { label: 'potassium (K)', quantity: 'massPerArea' },
    ],
  },
  sources: [
    { source: 'awmfh', certainty: 'from memory', covers: 'nitrogen as excreted, grow-finish pigs' },
    {
      source: 'awmfh',
      certainty: 'from memory',
      covers: 'phosphorus and potassium as excreted',
      unguarded: ['DROPPED_PER_1000_A_DAY 0.09', 'DROPPED_PER_1000_A_DAY 0.24'],
    },
    { source: 'koreaPhosphorus2024', certainty: 'published', covers: 'caution: more phosphorus elsewhere' },
    { source: 'ukNitrates2008', certainty: 'published', covers: 'caution: high for heavy pigs' },
    GROWING_LIMITS_USE,
  ],
  cautions: [
    'Local rules decide how much ground may take, how near water and when; ask before you plan by this number.',
    'Elemental P and K: P₂O₅ is 2.29 × P, K₂O is 1.205 × K. Growing and finishing pigs only. Phosphorus goes by the feed: a published figure is a third more.',
    'An average over a whole growth: it runs high for heavy pigs, on the safe side (UK law: 33 g of N a day from 66 kg; up to 47 here).',
    'Spread evenly on paper: near feeders, water and shelter it is far more. Move those.',
  ],
  examples: [{ args: [12, 150, 7, 0.25], gives: [[27.216, 4.536, 12.096]] }],
  run: nutrientLoad,
});
