/** What in the lists does not fit the season is said with its cell. Invented farm; limits are judgement. */
import { describe, expect, it } from 'vitest';
import type { TabContent, WireCell } from '../../shared/contract';
import { dayFromIso } from '../../shared/core/calendar/day';
import { findLists } from '../../shared/lists/find-lists';
import type { GroupList, PaddockList, ReadGroup } from '../../shared/lists/model';
import { readGroups } from '../../shared/lists/read-groups';
import { readPaddocks } from '../../shared/lists/read-paddocks';
import { seasonNotes } from '../../shared/lists/season-notes';
import { weighingNotes } from '../../shared/lists/weighing-notes';
import type { UnitSystem } from '../../shared/units/units';

const d = (iso: string): WireCell => (iso === '' ? '' : { d: iso });
const day = (iso: string): number => dayFromIso(iso)!;

function tabOf(name: string, values: WireCell[][]): TabContent {
  return { name, values, formulas: values.map((row) => row.map(() => '')) };
}

interface Farm {
  /** Name, open from, open until, last used. */
  paddocks?: [string, string, string, string][];
  /** Name, weight in kg, weighed on, gain in kg a day, in, until. */
  groups?: [string, number, string, number | '', string, string][];
  today?: string;
  system?: UnitSystem;
  isUnderWay?: boolean;
}

function notes(farm: Farm): string[] {
  const { paddocks = [], groups = [], today = '2026-03-01', system = 'metric', isUnderWay = false } = farm;
  const land = tabOf('Land', [
    ['Paddock', 'Area (ha)', 'Open from', 'Open until', 'Last used'],
    ['Plain', 1, '', '', ''],
    ...paddocks.map(([name, from, until, used]): WireCell[] => [name, 1, d(from), d(until), d(used)]),
  ]);
  const pigs = tabOf('Pigs', [
    ['Group', 'Head', 'Weight (kg)', 'Weighed on', 'Daily gain (kg/day)', 'In', 'Out'],
    ['Usual', 10, 30, d('2026-04-15'), 0.6, d('2026-04-20'), ''],
    ...groups.map(([name, kg, weighed, gain, from, until]): WireCell[] => [
      ...[name, 10, kg, d(weighed), gain],
      ...[d(from), d(until)],
    ]),
  ]);
  const paddockList = findLists([land])[0] as unknown as PaddockList;
  const groupList = findLists([pigs])[0] as unknown as GroupList;
  const read = readPaddocks(land, paddockList, system, false);
  const readPigs = readGroups(pigs, groupList, system, false);
  expect([...read.problems, ...readPigs.problems]).toEqual([]);
  return seasonNotes(
    { paddocks: read.paddocks, groups: readPigs.groups, paddockTab: 'Land', groupTab: 'Pigs' },
    { start: day('2026-04-20'), end: day('2026-10-31'), today: day(today), system, isUnderWay },
  );
}

it('a group that has long stood in one place, as long as no table says where it stands', () => {
  const land = { paddocks: [], paddockTab: 'Land', groupTab: 'Pigs' };
  const season = { start: day('2026-04-20'), end: day('2026-10-31'), system: 'metric' } as const;
  const group = {
    name: 'Reds',
    head: 9,
    weightKg: 30,
    weighedOn: day('2026-04-10'),
    standsIn: { paddock: 'Oak', since: day('2026-04-12') },
    cells: { since: { row: 5, column: 6 } },
  };
  const told = (today: string, isUnderWay = false): string[] =>
    seasonNotes({ ...land, groups: [group] }, { ...season, today: day(today), isUnderWay });
  // 12 April to 11 June: 18 + 31 + 11 days.
  expect(told('2026-06-11')).toEqual([]);
  expect(told('2026-06-12')).toEqual([
    'Pigs!F5: “Reds” stands in “Oak” since 2026-04-12, 61 days. Has it moved since? Then change the paddock and the day.',
  ]);
  expect(told('2026-06-12', true)).toEqual([]);
});

describe('paddocks and groups that never come into the season', () => {
  it('groups of another year', () => {
    const told = notes({
      groups: [
        ['Old', 30, '2024-04-20', 0.6, '2024-04-20', '2024-10-31'],
        ['Fut', 30, '2027-04-20', 0.6, '2027-04-20', ''],
        ['Now', 30, '2026-04-20', 0.6, '2026-05-20', '2026-10-01'],
      ],
    });
    expect(told).toEqual([
      'Pigs!G3: “Old” leaves on 2024-10-31, and the season begins on 2026-04-20: no moves are planned for it.',
      'Pigs!F4: “Fut” comes in on 2027-04-20, and the season ends on 2026-10-31: no moves are planned for it.',
    ]);
  });

  it('paddocks shut all season or last used on a day to come', () => {
    const told = notes({
      paddocks: [
        ['A', '2027-05-01', '', ''],
        ['D', '2025-05-01', '2025-10-31', ''],
        ['U', '', '', '2027-05-01'],
        ['Fine', '2026-06-01', '2026-09-01', '2026-02-01'],
      ],
    });
    expect(told).toEqual([
      'Land!C3: “A” opens on 2027-05-01, and the season ends on 2026-10-31: no pigs are planned there.',
      'Land!D4: “D” closes on 2025-10-31, and the season begins on 2026-04-20: no pigs are planned there.',
      'Land!E5: “U” was last used on 2027-05-01, a day still to come: its rest is counted from that day.',
    ]);
  });

  it('the first and the last day of the season count', () => {
    expect(
      notes({
        paddocks: [
          ['First', '', '2026-04-20', ''],
          ['Last', '2026-10-30', '', ''],
        ],
        groups: [
          ['First', 30, '2026-04-20', 0.6, '', '2026-04-21'],
          ['Last', 30, '2026-10-20', 0.6, '2026-10-30', ''],
        ],
      }),
    ).toEqual([]);
    expect(notes({ paddocks: [['Gone', '', '2026-04-19', '']] })).toHaveLength(1);
    expect(notes({ groups: [['Gone', 30, '2026-04-20', 0.6, '', '2026-04-20']] })).toHaveLength(1);
  });
});

describe('weighings that tell little', () => {
  it('after the day in, and years before it', () => {
    const told = notes({
      groups: [
        ['Typo', 20, '2027-04-20', 0.6, '2026-04-20', ''],
        ['Older', 20, '2020-04-20', 0.6, '2026-04-20', ''],
      ],
    });
    // 2191 days at 0.6 kg and 20 kg: 1334.6 kg.
    expect(told).toEqual([
      'Pigs!D3: “Typo” was weighed on 2027-04-20, after it comes in (2026-04-20). Check the date: weight, feed and water before the weighing are not known.',
      'Pigs!D4: “Older” was weighed on 2020-04-20, long before it comes in (2026-04-20), and is taken to weigh 1330 kg by then. Check the date, or weigh again.',
    ]);
  });

  it('not a weighing some weeks away, nor one during the season that has been', () => {
    expect(notes({ groups: [['Weaned', 20, '2026-02-01', '', '2026-04-20', '']] })).toEqual([]);
    const again: Farm = { groups: [['Again', 60, '2026-06-20', 0.6, '2026-04-20', '']], today: '2026-06-21' };
    expect(notes({ ...again, isUnderWay: true })).toEqual([]);
    // In a first plan every stay before the weighing would have its weight.
    expect(notes(again).join()).toContain('after it comes in (2026-04-20)');
  });

  it('a group that stands somewhere came in on its own day, not on the first of all groups', () => {
    const group: ReadGroup = {
      name: 'Late',
      head: 6,
      weightKg: 20,
      weighedOn: day('2026-05-08'),
      standsIn: { paddock: 'North', since: day('2026-05-08') },
      cells: {},
    };
    const season = {
      start: day('2026-04-20'),
      end: day('2026-10-30'),
      today: day('2026-05-15'),
      system: 'metric',
    } as const;
    expect(weighingNotes(group, 'Pigs', season)).toEqual([]);
    expect(weighingNotes({ ...group, standsIn: { paddock: 'North' } }, 'Pigs', season).join()).toContain(
      'after it comes in',
    );
  });

  it('weights and gains that no pig has, in the units of the farm', () => {
    const told = notes({
      groups: [
        ['All', 600, '2026-04-20', 0.6, '', ''],
        ['Fast', 30, '2026-04-20', 1.8, '', ''],
        ['Comma', 1.05, '2026-04-20', 0.6, '', ''],
      ],
      system: 'US',
    });
    // 600, 1.8 and 1.05 kg in pounds of 0.45359237 kg (definition): 1322.8, 3.968 and 2.315.
    expect(told).toEqual([
      'Pigs!C3: “All” weighs 1320 lb a pig. Check that it is the weight of one pig, and its unit.',
      'Pigs!E4: “Fast” gains 3.97 lb/day, more than growing pigs do. Check the number and its unit.',
      'Pigs!C5: “Comma” weighs 2.31 lb a pig. Check that it is the weight of one pig, and its unit.',
    ]);
  });
});
