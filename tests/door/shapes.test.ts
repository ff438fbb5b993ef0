/** The six shapes of a cell function: value to value, range to range, range to value, value to range, date, list. */
import { describe, expect, it } from 'vitest';
import { cell } from '../cell';

describe('value to value', () => {
  it('takes numbers, and text that is a plain number', () => {
    expect(cell('FENCE_LENGTH', 200, 300, 2)).toBe(2000);
    expect(cell('FENCE_LENGTH', '200', ' 3e2 ', '2')).toBe(2000);
  });

  it('takes a range of one cell for that cell', () => {
    expect(cell('FENCE_LENGTH', [[200]], [[300]])).toBe(1000);
    expect(cell('WATER_NEEDED', 12, 150, undefined, [['US']])).toBe(cell('WATER_NEEDED', 12, 150));
  });

  it.each([[''], [undefined], [null], [[['']]], [[[]]], [[]]])('takes %j for "not given"', (blank) => {
    expect(cell('FENCE_LENGTH', 200, 300, blank)).toBe(1000);
    expect(() => cell('FENCE_LENGTH', 200, blank)).toThrow('FENCE_LENGTH: length must be given, got a blank');
  });
});

describe('range to range', () => {
  const widths = [[100], [200], [300]];
  const lengths = [[50], [60], [70]];

  it('works a column in one call', () => {
    expect(cell('FENCE_LENGTH', widths, lengths)).toEqual([[300], [520], [740]]);
  });

  it('repeats single values', () => {
    expect(cell('FENCE_LENGTH', widths, 50, 2)).toEqual([[600], [1000], [1400]]);
    expect(cell('FENCE_LENGTH', 50, [[1, 2]], 1)).toEqual([[102, 104]]);
  });

  it('works a block cell by cell', () => {
    const block = [
      [1, 2],
      [3, 4],
    ];
    expect(cell('FENCE_LENGTH', block, block)).toEqual([
      [4, 8],
      [12, 16],
    ]);
  });

  it('answers blank rows by blanks, bad rows by a message, and the others all the same', () => {
    const got = cell(
      'FENCE_LENGTH',
      [[100], [''], ['wide'], [-1], ['#N/A'], [200], [true]],
      [[50], [''], [60], [70], [80], [''], [1]],
    );
    expect(got).toEqual([
      [300],
      [''],
      ['FENCE_LENGTH: width must be a number, got "wide"'],
      ['FENCE_LENGTH: width must be more than 0, got -1'],
      ['FENCE_LENGTH: width must be a number, got the error #N/A'],
      ['FENCE_LENGTH: length must be given, got a blank'],
      ['FENCE_LENGTH: width must be a number, got TRUE'],
    ]);
  });

  it('fills optional blanks from the default, row by row', () => {
    expect(cell('FENCE_LENGTH', [[100], [100]], [[50], [50]], [[''], [3]])).toEqual([[300], [900]]);
    expect(cell('FENCE_LENGTH', 100, 50, [[''], [3]])).toEqual([[300], [900]]);
  });

  it('takes text numbers and dates in rows', () => {
    expect(cell('FENCE_LENGTH', [['100'], [' 7.5 ']], 50)).toEqual([[300], [115]]);
    const growth = [[0, 0, 20, 50, 80, 60, 35, 30, 40, 25, 5, 0]];
    const starts = [['2026-04-20'], [''], [new Date('2026-05-01T00:00:00Z')], ['soon']];
    expect(cell('REGROWTH_DAYS', starts, growth, 800)).toEqual([
      [11 + 250 / 80],
      [''],
      [10],
      ['REGROWTH_DAYS: start_date must be a date (a date cell, or text such as "2026-04-20"), got "soon"'],
    ]);
  });

  it('refuses ranges of different shapes, and ragged ones', () => {
    expect(() => cell('FENCE_LENGTH', widths, [[1], [2]])).toThrow(
      'FENCE_LENGTH: length must have the same shape as width (3 × 1), got 2 × 1',
    );
    expect(() => cell('FENCE_LENGTH', [[1, 2], [3]], 5)).toThrow(
      'FENCE_LENGTH: width must be a whole rectangle of cells, got rows of different lengths',
    );
  });

  it('leaves what it was given as it was', () => {
    const frozen = Object.freeze([Object.freeze([100]), Object.freeze([''])]);
    expect(cell('FENCE_LENGTH', frozen, 50)).toEqual([[300], ['']]);
  });
});

describe('value to range, and rows of several cells', () => {
  it('gives one row', () => {
    expect(cell('FENCE_GRID', 2, 4, 120, 180)).toEqual([[1680, 1560, 3240]]);
    expect(cell('STRAND_HEIGHTS', 150, 1)).toHaveLength(1);
  });

  it('gives one row for each row of a column, all equally wide', () => {
    expect(cell('FENCE_GRID', [[2], [''], [0]], [[4], [''], [1]], 120, 180)).toEqual([
      [1680, 1560, 3240],
      ['', '', ''],
      ['FENCE_GRID: rows must be 1 or more, got 0', '', ''],
    ]);
  });

  it('pads an open row to the longest', () => {
    const got = cell('STRAND_HEIGHTS', [[150], [150]], [[1], [3]]) as unknown[][];
    expect(got.map((row) => row.length)).toEqual([3, 3]);
    expect(got[0]?.slice(1)).toEqual(['', '']);
  });

  it('refuses a range of several columns there', () => {
    expect(() => cell('FENCE_GRID', [[2, 3]], 4, 120, 180)).toThrow(
      'FENCE_GRID: rows must be one column, because the answer takes several cells a row, got 2 columns',
    );
  });

  it('gives lines of item, amount, unit, for one pen at a time', () => {
    for (const line of cell('TRAINING_PEN', 8, 100) as unknown[][]) expect(line).toHaveLength(3);
    expect(() => cell('TRAINING_PEN', [[8], [9]], 100)).toThrow(
      'TRAINING_PEN: head must be a single value, got a range of 2 × 1',
    );
  });
});

describe('range to value: lists', () => {
  it('reads a list in a row, a column or a block, and leaves blanks out', () => {
    expect(cell('SIDE_POSTS', [[210], [135], [180]], 25)).toBe(23);
    expect(cell('SIDE_POSTS', [[210, 135, 180]], 25)).toBe(23);
    expect(
      cell(
        'SIDE_POSTS',
        [
          [210, ''],
          [135, 180],
          ['', ''],
        ],
        25,
      ),
    ).toBe(23);
  });

  it('repeats a list against a range', () => {
    expect(cell('SIDE_POSTS', [[210], [135], [180]], [[25], [''], [50]])).toEqual([[23], [''], [12]]);
    expect(cell('SIDE_POSTS', 100, 25, [[true], [false], ['']])).toEqual([[4], [5], [4]]);
  });

  it('names the cell of a list that is wrong', () => {
    expect(() => cell('SIDE_POSTS', [[210], ['long'], [180]], 25)).toThrow(
      'SIDE_POSTS: sides, cell 2 must be a number, got "long"',
    );
    expect(() => cell('SIDE_POSTS', [[''], ['']], 25)).toThrow(
      'SIDE_POSTS: sides must hold at least 1 number, got 0',
    );
    expect(() => cell('REGROWTH_DAYS', '2026-04-20', [[1, 2, 3]], 100)).toThrow(
      'REGROWTH_DAYS: monthly_growth must hold 12 numbers, got 3',
    );
  });

  it('leaves a pair of records out only where both are blank', () => {
    const loads = [[10000], [''], [20000], [40000]];
    const covers = [[0.9], [''], [0.8], [0.7]];
    expect(cell('GROUND_LIMIT', loads, covers)).toBeCloseTo(30537, 0);
    expect(() => cell('GROUND_LIMIT', loads, [[0.9], [0.5], [0.8], [0.7]])).toThrow(
      'GROUND_LIMIT: liveweight_days, cell 2 must be a number, got a blank',
    );
    expect(() => cell('GROUND_LIMIT', loads, [[0.9], [0.8], [0.7]])).toThrow(
      'GROUND_LIMIT: cover_left must have as many cells as liveweight_days (4), got 3',
    );
  });

  it('reads corners in two columns, blank rows left out', () => {
    const field = [
      [42, -93],
      [42, -92.999],
      ['', ''],
      [42.001, -92.999],
      [42.001, -93],
    ];
    expect(cell('BOUNDARY_AREA', field)).toBe(
      cell(
        'BOUNDARY_AREA',
        field.filter(([lat]) => lat !== ''),
      ),
    );
  });
});

describe('dates', () => {
  const growth = [[0, 0, 20, 50, 80, 60, 35, 30, 40, 25, 5, 0]];

  it('takes a date cell or ISO text, and never gives a date back', () => {
    const wanted = 26.625;
    expect(cell('REGROWTH_DAYS', '2026-04-20', growth, 1800)).toBe(wanted);
    expect(cell('REGROWTH_DAYS', new Date(Date.UTC(2026, 3, 20)), growth, 1800)).toBe(wanted);
  });

  it.each([['2026-02-30'], [46_132], ['20.4.2026'], [new Date(Number.NaN)], [true]])('refuses %s', (date) => {
    expect(() => cell('REGROWTH_DAYS', date, growth, 1800)).toThrow(
      /^REGROWTH_DAYS: start_date must be a date/,
    );
  });

  it('refuses a date where a number belongs', () => {
    expect(() => cell('FENCE_LENGTH', new Date(0), 1)).toThrow(
      'FENCE_LENGTH: width must be a number, got a date',
    );
  });
});
