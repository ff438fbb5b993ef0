import { nutrientLoad } from '../../core/herd/nutrient-load';
import { define } from '../define';
import { DAYS_PARAM, HEAD_PARAM, UNITS_PARAM, WEIGHT_PARAM } from '../params';

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
    { source: 'awmfh', certainty: 'from memory', covers: 'nutrients as excreted, grow-finish pigs' },
    { source: 'ukNitrates2008', certainty: 'published', covers: 'caution: high for heavy pigs' },
    { source: 'judgement', certainty: 'judgement', covers: '5 to 160 kg as limits' },
  ],
  cautions: [
    'Local rules decide how much ground may take, how near water and when; ask before you plan by this number.',
    'Elemental P and K: P₂O₅ is 2.29 × P, K₂O is 1.205 × K. Growing and finishing pigs only.',
    'An average over a whole growth: it runs high for heavy pigs, on the safe side (UK law: 33 g of N a day from 66 kg; up to 47 here).',
    'Spread evenly on paper: near feeders, water and shelter it is far more. Move those.',
  ],
  examples: [{ args: [12, 150, 7, 0.25], gives: [[27.216, 4.536, 12.096]] }],
  run: nutrientLoad,
});
