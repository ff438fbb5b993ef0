/** Arguments for any catalogue entry: plausible ones that reach the arithmetic, and anything at all. */
import fc from 'fast-check';
import type { Param } from '../../shared/catalogue/define';
import { fromInside, type UnitSystem } from '../../shared/units/units';

/** Inside limits of a number argument, kept where people farm. */
function span(param: Extract<Param, { kind: 'number' | 'list' }>): readonly [number, number] {
  const low = param.above ?? param.min ?? 0;
  const below = 'below' in param ? param.below : undefined;
  const high = param.max ?? below ?? 1000;
  const gap = (high - low) * 1e-3;
  return [param.above === undefined ? low : low + gap, below === undefined ? high : high - gap];
}

/** A good inside value for a number argument. */
export function goodNumber(param: Extract<Param, { kind: 'number' | 'list' }>): fc.Arbitrary<number> {
  const [low, high] = span(param);
  if ('whole' in param && param.whole) return fc.integer({ min: Math.ceil(low), max: Math.min(high, 60) });
  // Numbers next to nothing, such as 5e-324, have no digits to compare; anyCell holds them.
  return fc.double({ min: low, max: high, noNaN: true }).map((value) => (value - low < 1e-9 ? low : value));
}

/** A good argument in cell units; lists and corners as rows of cells. */
export function goodCell(param: Param, system: UnitSystem): fc.Arbitrary<unknown> {
  switch (param.kind) {
    case 'number': {
      const { quantity } = param;
      return goodNumber(param).map((inside) => (quantity ? fromInside(inside, quantity, system) : inside));
    }
    case 'choice':
      return fc.constantFrom(...param.choices);
    case 'boolean':
      return fc.boolean();
    case 'date':
      return fc
        .date({ min: new Date('1990-01-01'), max: new Date('2060-12-31'), noInvalidDate: true })
        .map((date) => date.toISOString().slice(0, 10));
    case 'list': {
      const length = param.blanks === 'pair' ? 5 : (param.atMost ?? 6);
      return fc.array(
        goodNumber(param).map((value) => [value]),
        { minLength: length, maxLength: length },
      );
    }
    case 'corners':
      return fc
        .tuple(fc.double({ min: -80, max: 80, noNaN: true }), fc.double({ min: -179, max: 179, noNaN: true }))
        .map(([lat, lon]) => [
          [lat, lon],
          [lat, lon + 0.01],
          [lat + 0.01, lon + 0.01],
          [lat + 0.01, lon],
        ]);
    case 'units':
      return fc.constant(system);
  }
}

const ODD_NUMBERS = [
  0,
  -0,
  1,
  -1,
  0.1,
  1e-300,
  5e-324,
  1e300,
  -1e300,
  Number.MAX_VALUE,
  Number.NaN,
  Infinity,
  -Infinity,
  1e-9,
  1e9,
];

/** One cell of any kind that a spreadsheet, or a mistake, may hand over. */
export const anyCell: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom(...ODD_NUMBERS),
  fc.double(),
  fc.integer({ min: 0, max: 200 }),
  fc.constantFrom(
    '',
    null,
    undefined,
    '#N/A',
    '#REF!',
    '#DIV/0!',
    'US',
    'metric',
    'METRIC ',
    '12',
    '1e5',
    ' 7 ',
    '1,5',
  ),
  fc.string(),
  fc.boolean(),
  fc.date({ noInvalidDate: false }),
  fc.constantFrom('2026-04-20', 'copper', 'stainless'),
);

const rectangle = fc
  .tuple(fc.integer({ min: 1, max: 13 }), fc.integer({ min: 1, max: 3 }))
  .chain(([rows, columns]) =>
    fc.array(fc.array(anyCell, { minLength: columns, maxLength: columns }), {
      minLength: rows,
      maxLength: rows,
    }),
  );

/** One argument of any kind: a cell, a range, a ragged range, or something no spreadsheet has. */
export const anyArgument: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 6, arbitrary: anyCell },
  { weight: 3, arbitrary: rectangle },
  { weight: 1, arbitrary: fc.array(fc.array(anyCell, { maxLength: 3 }), { maxLength: 4 }) },
  { weight: 1, arbitrary: fc.array(anyCell, { maxLength: 4 }) },
  { weight: 1, arbitrary: fc.anything() },
);
