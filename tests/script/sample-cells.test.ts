/** The sample farms on their tabs: cells that stand blank take what is typed there for what it is. */
import { expect, it } from 'vitest';
import { openWorkbook } from '../../src/headless';
import { scriptText } from '../tasks/script-text';

it.each(['feet-marrow-creek', 'metric-larch-vale'])(
  '%s: a day typed into any blank cell is a day',
  async (sample) => {
    const book = await openWorkbook({ codeJs: await scriptText(), today: '2026-04-20' });
    expect(book.ask('startSample', { sample })).toMatchObject({ ok: true });
    const tabs = book.spreadsheet.getSheets().filter((tab) => tab.getName() !== 'Sheet1');
    const blank = tabs.flatMap((tab) =>
      book
        .values(tab.getName())
        .flatMap((row, r) =>
          row.flatMap((value, c) =>
            value === '' ? [{ tab: tab.getName(), cell: tab.getRange(r + 1, c + 1) }] : [],
          ),
        ),
    );
    expect(blank.length).toBeGreaterThan(5);
    for (const { tab, cell } of blank) {
      book.type(tab, cell.getA1Notation(), '2026-05-02');
      expect(cell.getValue()).toEqual(new Date('2026-05-02T00:00:00Z'));
    }
  },
);
