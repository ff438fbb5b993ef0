import { fenceVoltage } from '../../core/energizer/fence-voltage';
import { ENERGIZER_CAUTIONS } from '../cautions';
import { define } from '../define';
import { ENERGIZER_CAUTIONS_USE } from '../uses';

export const FENCE_VOLTAGE = define({
  name: 'FENCE_VOLTAGE',
  topic: 'energizer',
  summary: 'Volts at the far end of a fence: a steady planning estimate, not a measurement.',
  formula:
    'uniform leaky line: γ = √(r ÷ leak), Z₀ = √(r × leak), Zin = Z₀ (Z_L + Z₀ tanh γL) ÷ (Z₀ + Z_L tanh γL), V = E × Zin ÷ (Rs + Zin) ÷ (cosh γL + Z₀ ÷ Z_L × sinh γL)',
  params: [
    {
      kind: 'number',
      name: 'source_volts',
      unit: 'V',
      help: 'Volts of the energizer without load.',
      above: 0,
    },
    {
      kind: 'number',
      name: 'source_ohms',
      unit: 'Ω',
      help: 'Inner resistance of the energizer and its ground.',
      min: 0,
    },
    {
      kind: 'number',
      name: 'length',
      unit: 'any length',
      help: 'Length of the fence, in the unit that wire_ohms speaks of (for example 5 for 5 km).',
      min: 0,
    },
    {
      kind: 'number',
      name: 'wire_ohms',
      unit: 'Ω per unit length',
      help: 'Resistance of the wire per unit of that length.',
      min: 0,
    },
    {
      kind: 'number',
      name: 'leak_ohms',
      unit: 'Ω × unit length',
      help: 'Resistance to earth of one unit of that length, through growth and insulators. Left out: no leak.',
      optional: true,
      above: 0,
    },
    {
      kind: 'number',
      name: 'touch_ohms',
      unit: 'Ω',
      help: 'A load at the far end, 500 for an animal. Left out: none.',
      optional: true,
      above: 0,
    },
  ],
  result: { kind: 'value', label: 'volts at the far end', unit: 'V' },
  sources: [
    { source: 'lineTheory', certainty: 'from memory', covers: 'the formula' },
    { source: 'dalton2016', certainty: 'published', covers: '500 Ω for a body' },
    ENERGIZER_CAUTIONS_USE,
  ],
  cautions: [
    'A fence pulse also meets capacitance, inductance and reflections. Measure with a fence tester before you trust the fence.',
    ...ENERGIZER_CAUTIONS,
  ],
  examples: [
    { args: [8000, 300, 5, 35, 10000], gives: 6687.5, tolerance: 0.05 },
    { args: [8000, 300, 500, 4, undefined, 500], gives: 1428.6, tolerance: 0.05 },
  ],
  run: fenceVoltage,
});
