/** What a fence takes: worked examples of the sources, the rest counted by hand. */
import { describe, expect, test } from 'vitest';
import { materialNeeds } from '../../../shared/tasks/materials/material-needs';
import {
  MATERIALS_SETTINGS,
  type MaterialsSettings,
} from '../../../shared/tasks/materials/materials-settings';
import { strandsForWeight } from '../../../shared/tasks/materials/strands-for-weight';
import { insideSettings, settingProblems, startSettings } from '../../../shared/tasks/settings';

const FOOT = 0.3048;

function needs(lineFeet: number, posts: number, corners: number, typed: Partial<MaterialsSettings> = {}) {
  const settings = { ...startSettings(MATERIALS_SETTINGS, 'US'), ...typed };
  const fence = { meters: lineFeet * FOOT, posts, corners };
  return materialNeeds(
    { outerMeters: fence.meters, dividingMeters: 0, all: fence, set: fence },
    { kind: 'all' },
    insideSettings(MATERIALS_SETTINGS, settings, 'US'),
  );
}

describe('energizer and ground', () => {
  test('6 miles take 6 J, and 6 J take three 6 ft rods (Gerrish, Beef Magazine)', () => {
    const { joules, need } = needs(6 * 5280, 800, 4, { standing: 0 });
    expect(joules).toBeCloseTo(6, 9);
    expect(need.rods).toBe(3);
    expect(need.clamps).toBe(3);
  });

  test('the rods follow the energizer that is there: 15 J and 8 ft rods take 6 (3 ft a joule, NRCS Virginia 382)', () => {
    expect(needs(500, 40, 4, { energizerJoules: 15, rodLength: 8 }).need.rods).toBe(6);
  });

  test('fence that stands already is not bought but loads the energizer', () => {
    const { lineMeters, liveMeters } = needs(5280, 212, 4, { standing: 2640 });
    expect(lineMeters).toBeCloseTo(2640 * FOOT, 6);
    expect(liveMeters).toBeCloseTo(5280 * FOOT, 6);
  });
});

describe('counts by hand', () => {
  test('1,000 ft, 2 strands, 10 % more: 2,200 ft of wire, two rolls of 1,320, four reels of 660', () => {
    const { wireMeters, need } = needs(1000, 42, 4);
    expect(wireMeters / FOOT).toBeCloseTo(2200, 6);
    expect(need).toMatchObject({ rolls: 2, reels: 4, gateHandles: 4, energizer: 1, tester: 1 });
    // 38 line posts and 5 %: 39.9; two insulators on each of 4 corner posts and 5 %: 8.4.
    expect(need).toMatchObject({ linePosts: 40, cornerPosts: 4, insulators: 9 });
    // 50 to the fence, 33 to the first rod, 10 to the second: 3 m of rod at least take two of 6 ft.
    expect(need.cable / FOOT).toBeCloseTo(93, 6);
  });

  test('signs at most 90 m apart where the public passes (code of practice), none elsewhere', () => {
    const metric = insideSettings(MATERIALS_SETTINGS, startSettings(MATERIALS_SETTINGS, 'metric'), 'metric');
    const fence = { meters: 900, posts: 120, corners: 4 };
    const layout = { outerMeters: 900, dividingMeters: 0, all: fence, set: fence };
    const signs = (publicSide: number) =>
      materialNeeds(layout, { kind: 'all' }, { ...metric, publicSide }).need.signs;
    expect(signs(0)).toBe(0);
    expect(signs(180)).toBe(3);
    expect(signs(181)).toBe(4);
  });

  test('each group leapfrogs with a set of its own', () => {
    const inside = insideSettings(
      MATERIALS_SETTINGS,
      { ...startSettings(MATERIALS_SETTINGS, 'US'), groups: 3 },
      'US',
    );
    const set = { meters: 200, posts: 30, corners: 6 };
    const all = { meters: 2000, posts: 250, corners: 30 };
    const fence = { outerMeters: 900, dividingMeters: 1100, all, set };
    expect(materialNeeds(fence, { kind: 'set', paddocks: 2 }, inside)).toMatchObject({
      lineMeters: 600,
      need: { cornerPosts: 18 },
    });
  });

  test('strands by weight: 2 from 45 lb on, 3 below', () => {
    expect(strandsForWeight(45 * 0.45359237)).toBe(2);
    expect(strandsForWeight(44 * 0.45359237)).toBe(3);
  });
});

describe('settings', () => {
  test('are told with their unit and what came', () => {
    const values = {
      ...startSettings(MATERIALS_SETTINGS, 'US'),
      postSpacing: -2,
      strands: 2.5,
      rollLength: undefined,
    };
    expect(settingProblems(MATERIALS_SETTINGS, values, 'US').map(({ sentence }) => sentence)).toEqual([
      'Strands must be a whole number, got 2.5',
      'Gap between posts, at most must be more than 0 ft, got -2',
      'Wire on a roll must be a number, got a blank',
    ]);
  });
  test('the start values are all within their limits', () => {
    for (const units of ['US', 'metric'] as const) {
      expect(settingProblems(MATERIALS_SETTINGS, startSettings(MATERIALS_SETTINGS, units), units)).toEqual(
        [],
      );
    }
  });
});
