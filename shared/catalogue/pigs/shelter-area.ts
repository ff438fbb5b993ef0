import { shelterArea } from '../../core/herd/shelter-area';
import { HEAT_CAUTION } from '../cautions';
import { define } from '../define';
import { HEAD_PARAM, UNITS_PARAM, WEIGHT_PARAM } from '../params';
import { HEAT_USE } from '../uses';

export const SHELTER_AREA = define({
  name: 'SHELTER_AREA',
  topic: 'pigs',
  summary: 'Bedded floor on which every pig can lie.',
  formula: 'head × k × kg^0.67 m²',
  params: [
    HEAD_PARAM,
    WEIGHT_PARAM,
    {
      kind: 'number',
      name: 'k',
      help: 'Space coefficient; 0.047 where left out, which lets every pig lie flat.',
      optional: true,
      default: 0.047,
      above: 0,
    },
    UNITS_PARAM,
  ],
  result: { kind: 'value', label: 'bedded floor', quantity: 'floorArea' },
  sources: [
    { source: 'petherickBaxter1981', certainty: 'published, second hand', covers: 'k 0.047, exponent 0.67' },
    HEAT_USE,
    { source: 'defraPigCode', certainty: 'published', covers: 'shade and wallows' },
  ],
  cautions: [
    HEAT_CAUTION,
    'A dry, bedded lying floor only: sows with litters, feeders and doorways need more, and hot weather more again.',
  ],
  examples: [{ args: [1, 100, undefined, 'metric'], gives: 1.028, tolerance: 0.0005 }],
  run: shelterArea,
});
