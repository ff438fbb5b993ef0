import { animalUnits } from '../../core/herd/animal-units';
import { define } from '../define';
import { HEAD_PARAM, UNITS_PARAM, WEIGHT_PARAM } from '../params';

export const ANIMAL_UNITS = define({
  name: 'ANIMAL_UNITS',
  topic: 'pigs',
  summary: 'Animal units by liveweight.',
  formula: 'head × weight ÷ 1000 lb, or ÷ 500 kg',
  params: [HEAD_PARAM, WEIGHT_PARAM, UNITS_PARAM],
  result: { kind: 'value', label: 'animal units', unit: 'AU' },
  sources: [
    { source: 'nrcsManureUnit', certainty: 'published', covers: '1000 lb of liveweight' },
    { source: 'bmelLivestockUnit', certainty: 'published', covers: '500 kg of liveweight in metric' },
  ],
  cautions: [
    'Rules count animal units in different ways, often per head by class: use the rule’s own. Forage animal units are for stock that live on forage, which fed pigs do not.',
  ],
  examples: [{ args: [12, 150], gives: 1.8 }],
  run: animalUnits,
});
