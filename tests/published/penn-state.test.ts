/**
 * Penn State Extension, "Four Steps to Rotational Grazing" (forages.psu.edu/topics/pastures/management/step3.html),
 * the worked example; and Penn State Agronomy Guide, Table 1.8-9 (agguide.agronomy.psu.edu/cm/sec8/table1-8-9.cfm).
 * Both read.
 */
import { describe, expect, it } from 'vitest';
import { cell, numberOf } from '../cell';
import { expectPrinted } from './expect-printed';
import { numberIn, readTable } from './read-table';

describe('Four Steps to Rotational Grazing: 30 cows and a bull on 60 acres', () => {
  it('step 3: rest 35 days, grazed 3 days, takes 13 paddocks', () => {
    expect(cell('PADDOCKS_NEEDED', 35, 3)).toBe(13);
  });

  it('step 3 turned round: 13 paddocks of 3 days rest 36 days, one more than asked for', () => {
    expect(cell('REST_PERIOD', 13, 3)).toBe(36);
    expect(numberOf('DAYS_ON', 13, 36)).toBeCloseTo(3, 12);
  });

  it('step 4: 60 acres in 13 paddocks are 4.6 acres each, so the herd of 49.7 animal units stands at 10.8 an acre', () => {
    const acres = 60 / numberOf('PADDOCKS_NEEDED', 35, 3);
    expectPrinted(acres, '4.6');
    expectPrinted(numberOf('STOCKING_DENSITY', 30 * 1.6 + 1.7, acres), '10.8');
  });
});

describe('Table 1.8-9, acres per animal unit (25 lb of dry matter a day)', () => {
  for (const row of readTable('penn-state-1.8-9.csv')) {
    for (const available of [750, 1000, 1500]) {
      const printed = row[`at_${available}`] ?? '';
      it(`${row.days} days, ${row.use_percent} % used, ${available} lb an acre: ${printed}`, () => {
        const use = numberIn(row, 'use_percent') / 100;
        expectPrinted(numberOf('GRAZING_AREA', 25, numberIn(row, 'days'), available, use), printed);
      });
    }
  }

  it('has 21 cells', () => {
    expect(readTable('penn-state-1.8-9.csv').length * 3).toBe(21);
  });
});
