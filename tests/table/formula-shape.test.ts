/** Formulas of one builder look alike wherever their rows and lists stand. */
import { describe, expect, it } from 'vitest';
import { formulaShape } from '../../shared/block/formula-shape';

describe('the shape of a formula', () => {
  it('is the same for other rows, tabs, texts, numbers, separators and more terms of a sum', () => {
    expect(formulaShape('=SUM(A1:B2)*2')).toBe(formulaShape("=sum('My farm'!$A$1:$B$20) * 12.5"));
    expect(formulaShape('=D5-MIN(B5;B6)')).toBe(formulaShape('=D5-MIN(B5,B6)-MIN(B6,B7)'));
    expect(formulaShape('=IF(A2="";"";TRUE)')).toBe(formulaShape('=IF(Hof!A2="x(y";"a""b";WAHR)'));
    expect(formulaShape('=_xlfn.MAXIFS(A1:A2,B1:B2,B1)')).toBe(formulaShape('=MAXIFS(C1:C2;D1:D2;D1)'));
  });

  it('is another one for other functions or signs', () => {
    expect(formulaShape('=LOG10(A1)')).not.toBe(formulaShape('=A1'));
    expect(formulaShape('=A1*2')).not.toBe(formulaShape('=A1+2'));
    expect(formulaShape('=SQRT(25)')).not.toBe(formulaShape('=ROUNDUP(25;0)'));
  });
});
