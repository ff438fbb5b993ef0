/** How many live wires: one rule for the fence and for the training pen, by the weight that is set beside it. */
import { strandsForWeight } from '../core/fence/strands-for-weight';
import { GROWING_FROM_KG } from '../tables/strand-heights';
import { fromInside, symbolOf, toInside, type UnitSystem } from '../units/units';
import type { SettingSpec } from './settings';
import * as words from './words';

/** `weight`: the setting that holds the weight of the lightest pig. */
export function strandsSetting(label: string, weight: string): SettingSpec<'strands'> {
  return {
    key: 'strands',
    label,
    unit: 'wires',
    follows: (values, units) => strandsForWeight(toInside(values[weight] ?? 0, 'mass', units)),
    min: 1,
    max: 3,
    whole: true,
    note: {
      US: words.strandsByWeight(growingFrom('US')),
      metric: words.strandsByWeight(growingFrom('metric')),
    },
  };
}

/** Says that fewer wires are set than the weight asks for; undefined where not. */
export function tooFewStrands(weightKg: number, strands: number, units: UnitSystem): string | undefined {
  return strands < strandsForWeight(weightKg) ? words.tooFewStrands(growingFrom(units)) : undefined;
}

/** The same as a formula over the cells of weight and strands. Thousandths: no decimal point may stand in it. */
export function tooFewStrandsFormula(weight: string, strands: string, units: UnitSystem): string {
  const limit = Math.round(fromInside(GROWING_FROM_KG, 'mass', units) * 1000);
  const usual = strandsForWeight(0);
  return `=IF(AND(${weight}*1000<${limit};${strands}<${usual});"Look out: ${words.tooFewStrands(growingFrom(units))}";"")`;
}

function growingFrom(units: UnitSystem): string {
  return `${Math.round(fromInside(GROWING_FROM_KG, 'mass', units) * 10) / 10} ${symbolOf('mass', units)}`;
}
