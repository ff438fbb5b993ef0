/** What a fence takes: worked examples of the sources, the rest counted by hand. */
import { describe, expect, test } from 'vitest';
import { strandsForWeight } from '../../../shared/core/fence/strands-for-weight';
import type { FenceKind } from '../../../shared/tasks/materials/fence-types';
import { materialNeeds } from '../../../shared/tasks/materials/material-needs';
import {
  MATERIALS_SETTINGS,
  type MaterialsSettings,
} from '../../../shared/tasks/materials/materials-settings';
import { insideSettings, settingProblems, startSettings } from '../../../shared/tasks/settings';

const FOOT = 0.3048;

function needs(
  lineFeet: number,
  posts: number,
  corners: number,
  typed: Partial<MaterialsSettings> = {},
  kind: FenceKind = 'wire',
) {
  const settings = { ...startSettings(MATERIALS_SETTINGS, 'US'), ...typed };
  const fence = { meters: lineFeet * FOOT, posts, nets: posts, corners };
  return materialNeeds(
    { outerMeters: fence.meters, dividingMeters: 0, all: fence, set: fence, longest: [] },
    { kind: 'all' },
    kind,
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
    const fence = { meters: 900, posts: 120, nets: 18, corners: 4 };
    const layout = { outerMeters: 900, dividingMeters: 0, all: fence, set: fence, longest: [] };
    const signs = (publicSide: number) =>
      materialNeeds(layout, { kind: 'all' }, 'wire', { ...metric, publicSide }).need.signs;
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
    const set = { meters: 200, posts: 30, nets: 5, corners: 6 };
    const all = { meters: 2000, posts: 250, nets: 50, corners: 30 };
    const fence = { outerMeters: 900, dividingMeters: 1100, all, set, longest: [] };
    expect(materialNeeds(fence, { kind: 'set', paddocks: 2 }, 'wire', inside)).toMatchObject({
      lineMeters: 600,
      // Three fences that stand apart: an energizer for each, which has its own 200 m to feed.
      energizers: 3,
      liveMeters: 200,
      // 3 m of rod at least take two of 6 ft; 50 + 33 + 10 ft of cable, all three times.
      // Two openings of two strands in each of three sets.
      need: { gateHandles: 12, cornerPosts: 18, energizer: 3, rods: 6, clamps: 6, nets: 0, tester: 1 },
    });
    expect(materialNeeds(fence, { kind: 'set', paddocks: 2 }, 'wire', inside).need.cable / FOOT).toBeCloseTo(
      3 * 93,
      6,
    );
  });

  test('netting: whole nets with a guy line at each corner, and nothing of what wire takes', () => {
    const { need } = needs(656, 4, 4, {}, 'netting');
    expect(need).toMatchObject({ nets: 4, cornerPosts: 4, guys: 4, energizer: 1 });
    expect(need).toMatchObject({ linePosts: 0, rolls: 0, reels: 0, insulators: 0, gateHandles: 0 });
    // 200 ft that stand already spare one whole net of 164 ft.
    expect(needs(656, 4, 4, { standing: 200 }, 'netting').need.nets).toBe(3);
  });

  test('every live string of a net loads the energizer: 1 mile of 4 is 4 miles (Univ. of Maine, lesson 3)', () => {
    // 1 J a mile (Gerrish) of what Maine counts as four miles to energise.
    expect(needs(5280, 33, 4, { netStrings: 4 }, 'netting').joules).toBeCloseTo(4, 9);
    expect(needs(5280, 212, 4, { netStrings: 4 }).joules).toBeCloseTo(1, 9);
    // Twice for heavy growth: common practice.
    expect(needs(5280, 33, 4, { netStrings: 4, loadFactor: 2 }, 'netting').joules).toBeCloseTo(8, 9);
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
