/**
 * A sample farm has something to show on any day of the year, the first look included: made by the tasks themselves in
 * the season of that day. What is expected is counted here from the cells that a person sees.
 */

import { describe, expect, it } from 'vitest';
import { SAMPLE_FARMS } from '../../shared/samples/index';
import { plannedAtOnce } from '../../shared/tasks/rotation/rotation-task';
import { playSample } from '../../shared/tasks/sample-season';
import { openWorkbook, portOf, type Workbook } from '../../src/headless';
import { isoShown } from '../iso-shown';
import { scriptText } from '../tasks/script-text';

/** A leap day, the turn of the year, the day after a change of the clocks, spring and summer. */
const DAYS = ['2028-02-29', '2026-12-31', '2026-10-26', '2026-05-10', '2027-07-15'];

interface Move {
  readonly group: string;
  readonly paddock: string;
  readonly plannedIn: string;
  readonly movedIn: string;
  readonly out: string;
  readonly restBefore: string;
  readonly restDue: string;
}

function movesOf(book: Workbook): Move[] {
  const rows = book.shownValues('Rotation');
  const head = rows.findIndex((row) => row.includes('Moved in'));
  const at = (heading: string): number => rows[head]!.indexOf(heading);
  const settings = rows.findIndex((row, r) => r > head + 2 && row[at('Planned in')] === '');
  return rows.slice(head + 2, settings).map((row) => ({
    group: row[at('Group')]!,
    paddock: row[at('Paddock')]!,
    plannedIn: isoShown(row[at('Planned in')]!),
    movedIn: isoShown(row[at('Moved in')]!),
    out: isoShown(row[at('Out')]!),
    restBefore: row[at('Rest before (days)')]!,
    restDue: row[at('Rest due (days)')]!,
  }));
}

describe.each(SAMPLE_FARMS)('$title', (farm) => {
  it.each(DAYS)(
    'on %s',
    async (today) => {
      const book = await openWorkbook({ tabs: { Start: [] }, codeJs: await scriptText(), today });
      await playSample(portOf(book), farm, plannedAtOnce);
      const texts = book.spreadsheet.getSheets().flatMap((sheet) => book.shownValues(sheet.getName()).flat());
      expect(texts.filter((text) => /^#/.test(text))).toEqual([]);

      const moves = movesOf(book);
      const done = moves.filter(({ movedIn }) => movedIn !== '');
      const late = moves.filter(({ plannedIn, movedIn }) => movedIn === '' && plannedIn <= today);
      const ahead = moves.filter(({ plannedIn }) => plannedIn > today);
      expect(done.length).toBeGreaterThanOrEqual(4);
      expect(done.every(({ movedIn }) => movedIn < today)).toBe(true);
      expect(late.map(({ group }) => group)).toEqual([farm.weighings[0]!.group]);
      expect(ahead.length).toBeGreaterThanOrEqual(10);
      // Nobody shares a paddock, and what the table says of the rest keeps its own rule.
      for (const one of moves) {
        const shared = moves.filter(
          (other) => other !== one && other.paddock === one.paddock && other.plannedIn <= one.plannedIn,
        );
        expect(shared.filter(({ out }) => out > one.plannedIn)).toEqual([]);
        if (one.restBefore !== '') expect(Number(one.restBefore)).toBeGreaterThanOrEqual(Number(one.restDue));
      }

      const page = book.shownValues('Today').map(([label, value]) => `${label} ${value}`);
      expect(page.filter((line) => /^Late by 2 days/.test(line))).toHaveLength(1);
      expect(page.filter((line) => /^Goes to \S/.test(line)).length).toBe(
        new Set(moves.map(({ group }) => group)).size,
      );
      const log = book.shownValues('Herd log').filter((row) => row[4] === 'on the crate scale');
      expect(log.map((row) => row[3])).toEqual(farm.weighings.map(({ weight }) => weight));
    },
    120_000,
  );
});
