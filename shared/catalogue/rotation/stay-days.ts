import { stayDays } from '../../core/rotation/stay-days';
import { define } from '../define';
import { HEAD_PARAM } from '../params';

export const STAY_DAYS = define({
  name: 'STAY_DAYS',
  topic: 'rotation',
  summary: 'Days until a group has put its limit of liveweight-days on the ground.',
  formula: 'head × (weight × days + daily_gain × days² ÷ 2) = limit × area, solved for days',
  params: [
    {
      kind: 'number',
      name: 'area',
      unit: 'any area',
      help: 'Area of the paddock, in any unit of area.',
      above: 0,
    },
    HEAD_PARAM,
    {
      kind: 'number',
      name: 'weight',
      unit: 'any weight',
      help: 'Weight of one pig on the first day, in any unit of weight.',
      above: 0,
    },
    {
      kind: 'number',
      name: 'limit',
      unit: 'weight × days per unit of area',
      help: 'Liveweight-days that a unit of area bears, from your own records (GROUND_LIMIT).',
      above: 0,
    },
    {
      kind: 'number',
      name: 'daily_gain',
      unit: 'weight a day',
      help: 'Gain of one pig a day, in the same unit of weight, 4.4 at most; 0 where left out.',
      optional: true,
      default: 0,
      min: 0,
      // MOST_GAIN_KG_PER_DAY in lb: the unit is not told, and in kg no pig gains more either.
      max: 4.4,
    },
  ],
  result: { kind: 'value', label: 'longest stay', unit: 'days' },
  sources: [{ source: 'contract', certainty: 'definition', covers: 'liveweight-days of a growing group' }],
  cautions: [
    'Wet ground gives out much sooner than dry. Look at the cover each day and move early rather than late.',
  ],
  examples: [
    { args: [0.25, 12, 150, 40000], gives: 5.556, tolerance: 0.0005 },
    { args: [0.25, 12, 150, 40000, 1.5], gives: 5.409, tolerance: 0.0005 },
  ],
  run: stayDays,
});
