import { grazingArea } from '../../core/rotation/grazing-area';
import { define } from '../define';

export const GRAZING_AREA = define({
  name: 'GRAZING_AREA',
  topic: 'rotation',
  summary: 'Area that feeds stock which live on the forage alone, as fed pigs do not.',
  formula: 'demand × days ÷ (available_forage × use)',
  params: [
    {
      kind: 'number',
      name: 'demand',
      unit: 'mass a day',
      help: 'Dry matter that the whole group eats a day.',
      above: 0,
    },
    { kind: 'number', name: 'days', unit: 'days', help: 'Days of grazing.', above: 0 },
    {
      kind: 'number',
      name: 'available_forage',
      unit: 'mass per unit of area',
      help: 'Dry matter that stands on a unit of area, in the same unit of mass.',
      above: 0,
    },
    {
      kind: 'number',
      name: 'use',
      unit: 'part of the forage',
      help: 'Part of it that is eaten, such as 75 % or 0.75.',
      above: 0,
      max: 1,
    },
  ],
  result: { kind: 'value', label: 'area', unit: 'unit of area of available_forage' },
  sources: [
    { source: 'pennStateTable', certainty: 'published', covers: 'the table it reproduces' },
    { source: 'cornellWorksheet', certainty: 'published', covers: 'demand ÷ supply × days' },
    { source: 'edwards2003', certainty: 'published', covers: 'caution: growing pigs and grazing' },
  ],
  cautions: [
    'For stock that live on forage, such as cattle, sheep or dry sows on little grain. Growing pigs get less than 5 % of their feed from pasture: do not size pig paddocks by this.',
  ],
  examples: [{ args: [25, 3, 1000, 0.75], gives: 0.1 }],
  run: grazingArea,
});
