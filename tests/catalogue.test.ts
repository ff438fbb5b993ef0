import { describe, expect, it } from 'vitest';
import { CATALOGUE } from '../shared/catalogue';
import type { Example } from '../shared/catalogue/define';
import { SOURCES } from '../shared/sources';
import { BUILT_IN_FUNCTIONS } from './built-in-functions';
import { cell } from './cell';

const UNCHECKED = ['from memory', 'judgement', 'common practice, no source'];

/** Numbers to half a unit of the last digit that the contract prints; exact ones to 1e-9 relative. */
function expectAnswer(got: unknown, wanted: unknown, tolerance: number | undefined): void {
  if (typeof wanted === 'number' && typeof got === 'number') {
    expect(Math.abs(got - wanted), `${got} against ${wanted}`).toBeLessThanOrEqual(
      tolerance ?? Math.abs(wanted) * 1e-9,
    );
  } else if (Array.isArray(wanted) && Array.isArray(got)) {
    expect(got.length).toBe(wanted.length);
    wanted.forEach((part, i) => {
      expectAnswer(got[i], part, tolerance);
    });
  } else {
    expect(got).toBe(wanted);
  }
}

function title(name: string, example: Example): string {
  return `${name}(${example.args.map((arg) => JSON.stringify(arg) ?? '').join(', ')}) gives ${JSON.stringify(example.gives)}`;
}

describe('examples of the contract', () => {
  for (const entry of CATALOGUE) {
    for (const example of entry.examples) {
      it(title(entry.name, example), () => {
        expectAnswer(cell(entry.name, ...example.args), example.gives, example.tolerance);
      });
    }
  }
});

describe('catalogue', () => {
  const names = CATALOGUE.map((entry) => entry.name);

  it('holds the 29 functions of the contract in its order', () => {
    expect(names).toEqual(
      (
        'FENCE_LENGTH FENCE_GRID BOUNDARY_LENGTH BOUNDARY_AREA BOUNDARY_POSTS POST_COUNT SIDE_POSTS ROLL_COUNT ' +
        'STRAND_HEIGHTS ENERGIZER_JOULES GROUND_RODS WIRE_OHMS FENCE_VOLTAGE PIG_WEIGHT DAYS_TO_WEIGHT ' +
        'FEED_NEEDED WATER_NEEDED SHELTER_AREA STOCKING_DENSITY ANIMAL_UNITS NUTRIENT_LOAD REST_PERIOD ' +
        'PADDOCKS_NEEDED DAYS_ON STAY_DAYS GROUND_LIMIT REGROWTH_DAYS GRAZING_AREA TRAINING_PEN'
      ).split(' '),
    );
  });

  it('clashes with no spreadsheet function and no cell name', () => {
    for (const name of names) {
      expect(name).toMatch(/^[A-Z][A-Z0-9_]*[A-Z0-9]$/);
      expect(name).not.toMatch(/^[A-Z]{1,3}\d+$/);
      expect(BUILT_IN_FUNCTIONS.has(name), name).toBe(false);
      expect(BUILT_IN_FUNCTIONS.has(name.replace(/_/g, '.')), name).toBe(false);
    }
    expect(new Set(names).size).toBe(names.length);
  });

  it.each(CATALOGUE.map((entry) => [entry.name, entry] as const))('%s explains itself', (_, entry) => {
    expect(entry.summary).toMatch(/^[A-Z].*\.$/);
    expect(entry.formula.length).toBeGreaterThan(10);
    expect(entry.examples.length).toBeGreaterThan(0);
    expect(entry.sources.length).toBeGreaterThan(0);
    const text = [
      entry.summary,
      entry.formula,
      ...(entry.cautions ?? []),
      ...entry.params.map((p) => p.help),
    ];
    for (const words of text) expect(words).not.toMatch(/[\n<>]|\*\//);
    for (const param of entry.params) {
      expect(param.name).toMatch(/^[a-z][a-z_]*$/);
      expect(param.help, param.name).toMatch(/^\S.{8,}\.$/);
      expect(param.help).not.toMatch(/^Optional/);
      if ('default' in param && param.default !== undefined) expect(param.optional, param.name).toBe(true);
    }
    for (const { source, covers, certainty, unguarded } of entry.sources) {
      expect(Object.keys(SOURCES)).toContain(source);
      expect(covers.length).toBeGreaterThan(3);
      // What no published check guards is not called published.
      if (unguarded) expect(UNCHECKED).toContain(certainty);
    }
  });

  it.each(CATALOGUE.map((entry) => [entry.name, entry] as const))(
    '%s puts optional arguments behind required ones, units last',
    (_, entry) => {
      const optional = entry.params.map((param) => param.optional === true);
      expect(optional).toEqual([...optional].sort((a, b) => Number(a) - Number(b)));
      const unitsAt = entry.params.findIndex((param) => param.kind === 'units');
      if (unitsAt >= 0) expect(unitsAt).toBe(entry.params.length - 1);
      const convertsSomething =
        entry.params.some((p) => 'quantity' in p && p.quantity) ||
        JSON.stringify(entry.result).includes('quantity');
      if (convertsSomething) expect(unitsAt).toBeGreaterThan(0);
    },
  );

  it('uses every source of the bibliography', () => {
    const used = new Set(CATALOGUE.flatMap((entry) => entry.sources.map(({ source }) => source)));
    expect(Object.keys(SOURCES).filter((id) => !used.has(id as keyof typeof SOURCES))).toEqual([]);
  });

  it('never calls a judgement, a practice or a memory published', () => {
    for (const { name, sources } of CATALOGUE) {
      for (const { source, certainty } of sources) {
        if (source === 'practice') expect(certainty, name).toBe('common practice, no source');
        if (source === 'judgement') expect(['judgement', 'from memory'], name).toContain(certainty);
        if (source.startsWith('nrc2012') || source === 'awmfh' || source === 'lineTheory') {
          expect(certainty, name).toBe('from memory');
        }
      }
    }
  });

  it.each([
    ['ENERGIZER_JOULES', /manual.*local code/, /10 m \(33 ft\)/, /two energizers/, /2\.5 m/, /barbed wire/],
    ['GROUND_RODS', /manual.*local code/, /10 m \(33 ft\)/, /two energizers/, /2\.5 m/, /barbed wire/],
    ['FENCE_VOLTAGE', /rule of thumb for planning/, /fence tester/],
    ['NUTRIENT_LOAD', /Local rules decide/],
    ['SHELTER_AREA', /Heat/],
    ['WATER_NEEDED', /Heat/, /slowly.*vet/],
    ['REST_PERIOD', /not rest from parasites/],
    ['PADDOCKS_NEEDED', /not rest from parasites/],
    ['REGROWTH_DAYS', /not rest from parasites/],
    ['GRAZING_AREA', /live on forage/],
  ] as const)('%s carries its cautions', (name, ...cautions) => {
    const text = (CATALOGUE.find((entry) => entry.name === name)?.cautions ?? []).join(' ');
    for (const caution of cautions) expect(text).toMatch(caution);
  });
});
