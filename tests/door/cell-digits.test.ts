/** A whole answer is whole in the cell: INT of it is the same number. By hand: (270 − 60) ÷ 1.5 = 140. */
import { expect, it } from 'vitest';
import { openWorkbook } from '../../src/headless';
import { scriptText } from '../tasks/script-text';

it('from pounds too', async () => {
  const book = await openWorkbook({ tabs: { A: [['']] }, codeJs: await scriptText(), today: '2026-04-01' });
  expect(book.evaluate('=DAYS_TO_WEIGHT(60; 270; 1.5)')).toBe(140);
  expect(book.evaluate('=INT(DAYS_TO_WEIGHT(60; 270; 1.5))')).toBe(140);
});
