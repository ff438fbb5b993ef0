/** Refusals: NAME: argument must …, got …, with the unit of the grower. */
import { describe, expect, it } from 'vitest';
import { CATALOGUE } from '../../shared/catalogue/index';
import { readNumber } from '../../shared/door/read-cell';
import type { Refusal } from '../../shared/refusals';
import { cell } from '../cell';

const message = (name: string, ...args: readonly unknown[]): string => {
  try {
    cell(name, ...args);
  } catch (error) {
    return (error as Error).message;
  }
  throw new Error(`${name} did not refuse`);
};

describe('one pattern for every refusal', () => {
  it.each<[string, readonly unknown[], string]>([
    ['FENCE_LENGTH', [0, 300], 'FENCE_LENGTH: width must be more than 0, got 0'],
    ['FENCE_LENGTH', [200, 300, 1.5], 'FENCE_LENGTH: strands must be a whole number, got 1.5'],
    ['FENCE_LENGTH', [200, 300, 0], 'FENCE_LENGTH: strands must be 1 or more, got 0'],
    [
      'FENCE_LENGTH',
      [1e308, 1e308, 9],
      'FENCE_LENGTH: the result must be a finite number: check the arguments, got a number out of range',
    ],
    ['FENCE_LENGTH', [Number.NaN, 1], 'FENCE_LENGTH: width must be a number, got a number out of range'],
    ['FENCE_LENGTH', ['#REF!', 1], 'FENCE_LENGTH: width must be a number, got the error #REF!'],
    ['FENCE_LENGTH', ['1,200', 1], 'FENCE_LENGTH: width must be a number, got "1,200"'],
    ['FENCE_LENGTH', ['12 ft', 1], 'FENCE_LENGTH: width must be a number, got "12 ft"'],
    ['STRAND_HEIGHTS', [150, 4], 'STRAND_HEIGHTS: strands must be from 1 to 3, got 4'],
    // Days and gain in each other's place. 2 kg a day is judgement, in lb of 0.45359237 kg (definition) 4.409.
    [
      'FEED_NEEDED',
      [14, 62, 1.45, 7],
      'FEED_NEEDED: daily_gain must be from 0 lb/day to 4.409 lb/day, got 7 lb/day',
    ],
    [
      'PIG_WEIGHT',
      [25, 1.2, 60, 'metric'],
      'PIG_WEIGHT: daily_gain must be from 0 kg/day to 2 kg/day, got 60 kg/day',
    ],
    [
      'DAYS_TO_WEIGHT',
      [60, 250, 20],
      'DAYS_TO_WEIGHT: daily_gain must be more than 0 lb/day and at most 4.409 lb/day, got 20 lb/day',
    ],
    ['STAY_DAYS', [0.25, 12, 150, 40000, 5], 'STAY_DAYS: daily_gain must be from 0 to 4.4, got 5'],
    ['ROLL_COUNT', [-5, 1320], 'ROLL_COUNT: length must be 0 or more, got -5'],
    ['GRAZING_AREA', [25, 3, 1000, 75], 'GRAZING_AREA: use must be more than 0 and at most 1, got 75'],
    ['REST_PERIOD', [2, 3, 4], 'REST_PERIOD: paddocks must be at least groups (4), got 2'],
    ['DAYS_ON', [4, 30, 4], 'DAYS_ON: paddocks must be more than groups (4), got 4'],
    [
      'WIRE_OHMS',
      ['gold', 0.1],
      'WIRE_OHMS: metal must be one of "copper", "aluminum", "aluminium", "mild steel", "high-tensile steel", "stainless", got "gold"',
    ],
    ['SIDE_POSTS', [100, 25, 'yes'], 'SIDE_POSTS: closed must be TRUE or FALSE, got "yes"'],
    ['BOUNDARY_AREA', [], 'BOUNDARY_AREA: corners must be given, got a blank'],
    ['BOUNDARY_AREA', [[[42, -93]]], 'BOUNDARY_AREA: corners must hold at least 3 corners, got 1'],
    [
      'BOUNDARY_AREA',
      [[[42], [43], [44]]],
      'BOUNDARY_AREA: corners must be two columns, latitude and longitude, got 1 column',
    ],
    [
      'BOUNDARY_AREA',
      [
        [
          [42, -93],
          [95, -93],
          [44, 1],
        ],
      ],
      'BOUNDARY_AREA: corners, row 2, latitude must be from -90 to 90, got 95',
    ],
    [
      'BOUNDARY_AREA',
      [
        [
          [42, -93],
          [42, 190],
          [44, 1],
        ],
      ],
      'BOUNDARY_AREA: corners, row 2, longitude must be from -180 to 180, got 190',
    ],
    [
      'BOUNDARY_AREA',
      [
        [
          [42, -93],
          ['', 3],
          [44, 1],
        ],
      ],
      'BOUNDARY_AREA: corners, row 2, latitude must be a number, got a blank',
    ],
    ['ANIMAL_UNITS', [12, 150, 'imperial'], 'ANIMAL_UNITS: units must be "US" or "metric", got "imperial"'],
  ])('%s%j', (name, args, sentence) => {
    expect(message(name, ...args)).toBe(sentence);
  });

  it('shortens long text', () => {
    expect(message('FENCE_LENGTH', 'x'.repeat(100), 1)).toBe(
      `FENCE_LENGTH: width must be a number, got "${'x'.repeat(40)}…"`,
    );
  });
});

describe('a limit that is told can be typed', () => {
  const params = CATALOGUE.flatMap(({ name, params }) =>
    params.flatMap((param) =>
      param.kind === 'number' && param.quantity && param.min !== undefined && param.max !== undefined
        ? [{ name, argument: param.name, param }]
        : [],
    ),
  );

  it.each(params)('$name: $argument', ({ param }) => {
    for (const system of ['US', 'metric'] as const) {
      const told = (): string => {
        try {
          readNumber(param, 1e9, system);
        } catch (error) {
          return (error as Refusal).sentence('X', system);
        }
        return '';
      };
      const [, low, high] = / be from (\S+) .* to (\S+) /.exec(told()) ?? [];
      // But for what the conversion of a temperature loses at the sixteenth digit.
      const typed = [Number(low) + 1e-9, Number(high) - 1e-9];
      expect(() => typed.map((limit) => readNumber(param, limit, system)), told()).not.toThrow();
    }
  });

  // 5 kg are 5 ÷ 0.45359237 = 11.0231 lb.
  it('5 kg in pounds', () => {
    expect(message('PIG_WEIGHT', 11.02, 1)).toContain('from 11.03 lb');
    expect(cell('PIG_WEIGHT', 11.03, 1)).toBeGreaterThan(11);
  });
});

describe('units in words', () => {
  it.each([
    ['US', 'WATER_NEEDED: temperature must be from -58 °F to 140 °F, got 200 °F'],
    ['metric', 'WATER_NEEDED: temperature must be from -50 °C to 60 °C, got 200 °C'],
  ])('%s: a temperature', (units, sentence) => {
    expect(message('WATER_NEEDED', 12, 150, 200, units)).toBe(sentence);
  });

  it.each([
    [undefined, 'ENERGIZER_JOULES: fence_length must be more than 0 ft, got -3 ft'],
    ['METRIC', 'ENERGIZER_JOULES: fence_length must be more than 0 m, got -3 m'],
  ])('%s: a length', (units, sentence) => {
    expect(message('ENERGIZER_JOULES', -3, 1, units)).toBe(sentence);
  });

  it.each([
    ['us', 'NUTRIENT_LOAD: area must be more than 0 ac, got -2 ac'],
    ['Metric', 'NUTRIENT_LOAD: area must be more than 0 ha, got -2 ha'],
  ])('%s: an area', (units, sentence) => {
    expect(message('NUTRIENT_LOAD', 12, 150, 7, -2, units)).toBe(sentence);
  });

  it('text where a measure belongs is told without a unit', () => {
    expect(message('ENERGIZER_JOULES', 'far')).toBe(
      'ENERGIZER_JOULES: fence_length must be a number, got "far"',
    );
  });
});
