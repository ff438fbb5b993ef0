/** Late moves typed at random, the table rebuilt again and again: nothing typed is ever lost, no rule ever broken. */
import { describe, expect, it } from 'vitest';
import type { BlockInfo } from '../../shared/contract';
import type { StartCell, Workbook } from '../../src/headless';
import { openWorkbook } from '../../src/headless';
import { cellUnder } from '../cell-under';
import { checkPlan } from '../plan/check-plan';
import { seededNumbers } from '../plan/random-farm';
import { scriptText } from '../tasks/script-text';
import { isoOf, type ShownMove, shownMoves } from './check-table';
import { MESSY_WORKBOOKS } from './messy-workbooks';
import { buildRotation, type Outcome, readBook, writeRotation } from './rotation-task';
import { differences, sheetPicture } from './sheet-picture';

const day = (iso: string): number => Date.parse(iso) / 86_400_000;
const START = day('2026-04-01');
/** More with SOUNDER_FUZZ, as for the messy workbooks. */
const SEQUENCES = Math.max(12, Math.round(MESSY_WORKBOOKS / 80));
const REBUILDS = 4;
const RULES = {
  rest: { kind: 'fixed', days: 12 },
  shortestStayDays: 2,
  longestStayDays: 5,
  moveWeekdays: [true, true, true, true, true, true, true],
  noMoveDays: [],
  seasonStart: START,
  seasonEnd: START + 40,
} as const;
const NOTES = [
  '=1+1',
  '+49 30',
  '@vet',
  "'quoted",
  '<b>wet</b>',
  'two\nlines',
  '🐗',
  'مرعى',
  '-',
  '007',
  '50%',
  '2026-05-01',
  '"',
];
const t = (text: string): StartCell => ({ text });
const TABS: Record<string, StartCell[][]> = {
  Farm: [
    [
      t('Paddock'),
      t('Acres'),
      '',
      t('Group'),
      t('Head'),
      t('Weight (lb)'),
      t('Weighed on'),
      t('ADG (lb/day)'),
    ],
    [t('=North'), 0.5, '', t('>Reds'), 10, 60, { d: '2026-03-28' }, 1.5],
    [t('So"uth'), 0.4, '', t('Blacks*'), 8, 90, { d: '2026-03-28' }, 1.6],
    ...['@Oak', '<i>Hill</i>', 'Creek 🐖', '~West', 'Hay?'].map((name, i): StartCell[] => [
      t(name),
      0.5 + i / 20,
    ]),
  ],
  Other: [[t('=keep'), '=1+1', 3.5]],
};

/** What a person typed into one move: it must stand there, or in a line below the table, after every rebuild. */
interface Typed {
  readonly group: string;
  readonly paddock: string;
  readonly movedIn: string;
  readonly note: string;
  readonly cover: number;
}

async function oneSequence(seed: number, codeJs: string): Promise<{ typed: number; rebuilds: number }> {
  const next = seededNumbers(seed);
  const whole = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1));
  const workbook = await openWorkbook({ tabs: TABS, codeJs, today: new Date(START * 86_400_000) });
  workbook.failOn('setBackgrounds');
  let info = built(await buildRotation(workbook, { rules: RULES }));
  const before = sheetPicture(workbook, info);
  const done: Typed[] = [];
  let rebuilds = 0;
  for (let round = 0; round < REBUILDS; round++) {
    let today = START;
    for (const group of ['>Reds', 'Blacks*']) {
      const moves = shownMoves(workbook, info).filter((move) => move.cell('Group') === group);
      const open = moves.filter((move) => move.cell('Moved in') === '').slice(0, whole(0, 2));
      for (const move of open) {
        const late = whole(0, 2);
        const real = dayOf(nowIn(workbook, info, move).cell('Planned in')) + late;
        const typed = {
          group,
          paddock: String(move.cell('Paddock')),
          movedIn: isoOf(real),
          note: `${NOTES[whole(0, NOTES.length - 1)]} ${done.length}`,
          cover: whole(50, 99) / 100,
        };
        type(workbook, info, move, 'Moved in', typed.movedIn);
        type(workbook, info, move, 'Cover left', String(typed.cover));
        put(workbook, info, move, 'Note', typed.note);
        done.push(typed);
        today = Math.max(today, real + 1);
      }
    }
    workbook.state.now = () => new Date(today * 86_400_000 + 43_200_000);
    const outcome = await buildRotation(workbook);
    if (outcome.kind === 'no plan') {
      expect(outcome.reason).toMatch(/[a-z]{3}/);
      break;
    }
    info = built(outcome);
    rebuilds += 1;
    if (outcome.kind === 'written')
      expect(checkPlan(outcome.problem, outcome.plan.stays).faults, `seed ${seed}`).toEqual([]);
    expectKept(workbook, info, done, `seed ${seed}, round ${round}`);
    expect(differences(before, sheetPicture(workbook, info)).join('\n')).toBe('');
  }
  return { typed: done.length, rebuilds };
}

function expectKept(workbook: Workbook, info: BlockInfo, done: readonly Typed[], where: string): void {
  const shown = shownMoves(workbook, info).map((move) => ({
    group: move.cell('Group'),
    paddock: move.cell('Paddock'),
    movedIn: iso(move.cell('Moved in')),
    note: move.cell('Note'),
    cover: move.cell('Cover left'),
  }));
  for (const typed of done) expect(shown, where).toContainEqual(typed);
  expect(shown.filter(({ movedIn }) => movedIn !== '').length, where).toBe(done.length);
}

function built(outcome: Outcome): BlockInfo {
  if (outcome.kind !== 'written') throw new Error(JSON.stringify(outcome));
  return outcome.info;
}

function nowIn(workbook: Workbook, info: BlockInfo, move: ShownMove): ShownMove {
  return shownMoves(workbook, info).find(({ row }) => row === move.row)!;
}

function iso(cell: unknown): string {
  return cell === '' ? '' : (cell as { d: string }).d;
}

function dayOf(cell: unknown): number {
  return day(iso(cell));
}

function type(workbook: Workbook, info: BlockInfo, move: ShownMove, heading: string, text: string): void {
  workbook.type(info.tab, cellUnder(workbook, heading, move.row, info.tab), text);
}

/** Text as text, as with an apostrophe before it. */
function put(workbook: Workbook, info: BlockInfo, move: ShownMove, heading: string, text: string): void {
  workbook.gate.uncounted(() =>
    workbook
      .range(info.tab, cellUnder(workbook, heading, move.row, info.tab))
      .setNumberFormat('@')
      .setValue(text),
  );
}

describe('late moves and rebuilds', () => {
  it('keeps everything typed through random sequences', async () => {
    const codeJs = await scriptText();
    const sums = { typed: 0, rebuilds: 0 };
    for (let seed = 1; seed <= SEQUENCES; seed++) {
      const { typed, rebuilds } = await oneSequence(seed, codeJs);
      sums.typed += typed;
      sums.rebuilds += rebuilds;
    }
    console.log(
      `rebuilds: ${SEQUENCES} sequences, ${sums.rebuilds} rebuilds, ${sums.typed} moves typed with cover and note, 0 lost`,
    );
    expect(sums.typed).toBeGreaterThan(SEQUENCES);
  }, 1_200_000);
});

describe('two people at once', () => {
  async function farm(): Promise<Workbook> {
    return openWorkbook({ tabs: TABS, codeJs: await scriptText(), today: '2026-04-01' });
  }

  it('the second one to build is told that a table stands already', async () => {
    const workbook = await farm();
    const [mine, yours] = [readBook(workbook), readBook(workbook)];
    const info = built(await writeRotation(workbook, mine, { rules: RULES }));
    const before = sheetPicture(workbook);
    const late = await writeRotation(workbook, yours, {
      rules: RULES,
      place: { at: 'new-tab', tab: 'Mine too' },
    });
    expect(late).toMatchObject({
      kind: 'refused',
      sentences: [expect.stringContaining('already stands on “Rotation”')],
    });
    expect(differences(before, sheetPicture(workbook))).toEqual([]);
    expect(info.tab).toBe('Rotation');
  });

  it('the second one to rebuild is told that the table has changed, and loses nothing', async () => {
    const workbook = await farm();
    const info = built(await buildRotation(workbook, { rules: RULES }));
    const mine = readBook(workbook);
    const move = shownMoves(workbook, info)[0]!;
    type(workbook, info, move, 'Moved in', '2026-04-02');
    const yours = readBook(workbook);
    built(await writeRotation(workbook, yours));
    const before = sheetPicture(workbook);
    const late = await writeRotation(workbook, mine);
    expect(late).toMatchObject({
      kind: 'refused',
      sentences: [expect.stringContaining('The rotation table on “Rotation” was changed')],
    });
    expect(differences(before, sheetPicture(workbook))).toEqual([]);
  });

  it('waits its turn: while another one writes nothing is written', async () => {
    const workbook = await farm();
    const before = sheetPicture(workbook);
    workbook.holdLockElsewhere();
    expect(await buildRotation(workbook, { rules: RULES })).toMatchObject({
      kind: 'refused',
      sentences: [expect.stringContaining('Somebody else is writing')],
    });
    expect(differences(before, sheetPicture(workbook))).toEqual([]);
    workbook.holdLockElsewhere(false);
    built(await buildRotation(workbook, { rules: RULES }));
  });
});
