/** The same farm in other places and seasons: the table means the same days and the same amounts everywhere. */
import { describe, expect, it } from 'vitest';
import type { BlockInfo } from '../../shared/contract';
import type { PlanRules } from '../../shared/plan/model';
import { openWorkbook, type StartCell, type Workbook } from '../../src/headless';
import { scriptText } from '../tasks/script-text';
import { shownMoves, tableFaults } from './check-table';
import { buildRotation, type Outcome } from './rotation-task';

const day = (iso: string): number => Date.parse(iso) / 86_400_000;
const isoOf = (value: number): string => new Date(value * 86_400_000).toISOString().slice(0, 10);
const t = (text: string): StartCell => ({ text });

function farm(start: number): Record<string, StartCell[][]> {
  const used = { d: isoOf(start - 9) };
  return {
    ظهر: [
      [
        t('Paddock'),
        t('Area (ha)'),
        t('Last used'),
        '',
        t('Group'),
        t('Head'),
        t('Weight (kg)'),
        t('Weighed on'),
        t('Daily gain (kg)'),
      ],
      [t('مرعى الشمال'), 0.25, used, '', t('קבוצה א'), 12, 38.5, { d: isoOf(start - 1) }, 0.75],
      [t('‏שדה‏'), 0.5, t(isoOf(start - 20))],
      [t('Ost'), 0.375, ''],
      [t('West'), 0.4, used],
    ],
  };
}

function rules(start: number, days = 24): PlanRules {
  return {
    // Twelve different rests, so that a month read wrongly shows. January first.
    rest: { kind: 'monthly', days: [11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22] },
    shortestStayDays: 2,
    longestStayDays: 7,
    groundLimit: 1.6,
    moveWeekdays: [true, true, true, true, true, true, true],
    noMoveDays: [start + 3],
    seasonStart: start,
    seasonEnd: start + days,
  };
}

async function open(start: number, options: Partial<Parameters<typeof openWorkbook>[0]>): Promise<Workbook> {
  const today = new Date(start * 86_400_000 + 43_200_000);
  const workbook = await openWorkbook({ tabs: farm(start), codeJs: await scriptText(), today, ...options });
  workbook.failOn('setBackgrounds');
  return workbook;
}

type Written = Extract<Outcome, { kind: 'written' }>;

async function built(workbook: Workbook, start: number): Promise<Written> {
  const outcome = await buildRotation(workbook, { rules: rules(start), units: 'metric' });
  if (outcome.kind !== 'written') throw new Error(JSON.stringify(outcome));
  const { info, problem, plan, units } = outcome;
  expect(tableFaults(workbook, info, problem, plan, units).join('\n')).toBe('');
  return outcome;
}

/** What a person sees of the moves, without how numbers and dates look in that place. */
function meaning(workbook: Workbook, info: BlockInfo): unknown[] {
  const headings = [
    'Group',
    'Paddock',
    'Planned in',
    'Days',
    'Out',
    'Weight in',
    'Liveweight',
    'Rest before',
    'Rest due',
    'Check',
    'Feed for the stay',
    'Water',
  ];
  return shownMoves(workbook, info).map(({ cell }) =>
    headings.map((heading) => {
      const value = cell(heading);
      return typeof value === 'number' ? Number(value.toPrecision(12)) : value;
    }),
  );
}

const SEASONS = {
  'the clock going forward in Europe': '2026-03-20',
  'the clock going back in Europe': '2026-10-16',
  'the clock going forward in North America': '2026-03-01',
  'the clock going back in North America': '2026-10-25',
  'the clock going forward in New Zealand': '2026-09-20',
  'a leap day': '2028-02-20',
  'a February without one': '2027-02-20',
  'a new year': '2026-12-20',
  'a southern summer': '2027-01-02',
} as const;
const ZONES = [
  'Europe/Berlin',
  'America/New_York',
  'Pacific/Auckland',
  'Asia/Kolkata',
  'Pacific/Kiritimati',
  'Etc/UTC',
];
const LOCALES = ['en_US', 'de_DE', 'fr_FR', 'pt_BR', 'en_GB'];

describe('seasons', () => {
  it.each(Object.entries(SEASONS))(
    'across %s: whole days, the right months, in every zone',
    async (_, iso) => {
      const start = day(iso);
      const meanings = new Set<string>();
      for (const timeZone of ZONES) {
        const scriptTimeZone = ZONES[(ZONES.indexOf(timeZone) + 3) % ZONES.length]!;
        const workbook = await open(start, { timeZone, scriptTimeZone });
        const { info } = await built(workbook, start);
        meanings.add(JSON.stringify(meaning(workbook, info)));
      }
      expect([...meanings]).toHaveLength(1);
    },
    240_000,
  );
});

describe('locales', () => {
  it('the same table in every locale, decimal commas or points', async () => {
    const start = day('2026-04-01');
    const meanings = new Set<string>();
    for (const locale of LOCALES) {
      const workbook = await open(start, {
        locale,
        timeZone: 'Europe/Berlin',
        scriptTimeZone: 'America/Los_Angeles',
      });
      const { info } = await built(workbook, start);
      meanings.add(JSON.stringify(meaning(workbook, info)));
    }
    expect([...meanings]).toHaveLength(1);
  }, 240_000);

  it.each(['de_DE', 'fr_FR'])(
    '%s: a late move typed as people there type it shifts the rest, and is kept on a rebuild',
    async (locale) => {
      const start = day('2026-04-01');
      const workbook = await open(start, {
        locale,
        timeZone: 'Europe/Berlin',
        scriptTimeZone: 'America/Los_Angeles',
      });
      const { info } = await built(workbook, start);
      const [first, second] = shownMoves(workbook, info);
      workbook.type(info.tab, `D${first!.row}`, locale === 'de_DE' ? '03.04.2026' : '03/04/2026');
      workbook.type(info.tab, `Q${first!.row}`, '0,85');
      const [moved, next] = shownMoves(workbook, info);
      expect(moved!.cell('Moved in')).toEqual({ d: '2026-04-03' });
      const shifted =
        day((next!.cell('Planned in') as { d: string }).d) -
        day((second!.cell('Planned in') as { d: string }).d);
      expect(shifted).toBe(2);
      workbook.state.now = () => new Date('2026-04-04T10:00:00Z');
      const again = await buildRotation(workbook);
      if (again.kind !== 'written') throw new Error(JSON.stringify(again));
      // A table without the word for even use is built anew with it.
      expect(again.rules).toEqual({ ...rules(start), evenness: 0 });
      const [kept] = shownMoves(workbook, again.info);
      expect([kept!.cell('Moved in'), kept!.cell('Cover left')]).toEqual([{ d: '2026-04-03' }, 0.85]);
    },
    60_000,
  );
});

describe('the day it is', () => {
  it.each([
    ['Pacific/Auckland', '2026-03-31T12:30:00Z', '2026-04-01'],
    ['America/Los_Angeles', '2026-04-01T05:30:00Z', '2026-03-31'],
    ['Pacific/Kiritimati', '2026-12-31T11:00:00Z', '2027-01-01'],
  ])('is that of the spreadsheet in %s, not of the script', async (timeZone, instant, today) => {
    const workbook = await open(day('2026-04-01'), {
      timeZone,
      scriptTimeZone: 'Etc/UTC',
      today: new Date(instant),
    });
    expect(workbook.ask('readFile')).toMatchObject({ data: { overview: { today } } });
  });
});
