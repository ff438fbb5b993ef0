import { wireOhms } from '../../core/energizer/wire-ohms';
import { define } from '../define';
import { UNITS_PARAM } from '../params';

export const WIRE_OHMS = define({
  name: 'WIRE_OHMS',
  topic: 'energizer',
  summary: 'Resistance of fence wire at 20 °C (68 °F), per 1000 ft or per km.',
  formula: 'resistivity ÷ (π ÷ 4 × diameter²) ÷ wires',
  params: [
    {
      kind: 'choice',
      name: 'metal',
      help: 'Metal of the wire.',
      choices: ['copper', 'aluminum', 'aluminium', 'mild steel', 'high-tensile steel', 'stainless'],
    },
    {
      kind: 'number',
      name: 'diameter',
      quantity: 'diameter',
      help: 'Thickness of one wire. Steel gauge is not the copper gauge: 12.5 gauge fence wire is 0.099 in.',
      above: 0,
    },
    {
      kind: 'number',
      name: 'wires',
      unit: 'wires',
      help: 'Equal wires side by side, as in polywire; 1 where left out.',
      optional: true,
      default: 1,
      min: 1,
      whole: true,
    },
    UNITS_PARAM,
  ],
  result: { kind: 'value', label: 'resistance', quantity: 'ohmsPerLength' },
  sources: [
    {
      source: 'resistivityTables',
      certainty: 'published',
      covers: 'resistivity of copper, aluminium and mild steel',
    },
    { source: 'stainless304', certainty: 'published', covers: 'resistivity of stainless' },
    {
      source: 'judgement',
      certainty: 'from memory',
      covers: 'resistivity of high-tensile steel (worked back from about 35 Ω/km at 2.5 mm)',
    },
  ],
  cautions: ['Knots, rust and joints add resistance; polywire loses strands with age. Measure the fence.'],
  examples: [
    { args: ['high-tensile steel', 2.515, 1, 'metric'], gives: 34.82, tolerance: 0.005 },
    { args: ['stainless', 0.2, 9, 'metric'], gives: 2546, tolerance: 0.5 },
  ],
  run: wireOhms,
});
