/**
 * Typing into a cell with a number format. The order and the sign of days are those of CLDR's short dates for the
 * locale; serial numbers count days from 1899-12-30, so that 2026-04-21 is 46133.
 */
import { expect, test } from 'vitest';
import { localeOf } from '../../src/preview/engine/locale';
import { typedIntoCell } from '../../src/preview/engine/typed-text';

test.each([
  ['de_DE', '21.04.2026'],
  ['de_AT', '21.4.2026'],
  ['de_CH', '21.04.2026'],
  ['pl_PL', '21.04.2026'],
  ['da_DK', '21.04.2026'],
  ['nb_NO', '21.4.2026'],
  ['fi_FI', '21.4.2026'],
  ['tr_TR', '21.04.2026'],
  ['ru_RU', '21.04.2026'],
  ['fr_FR', '21/04/2026'],
  ['es_ES', '21/4/2026'],
  ['it_IT', '21/4/2026'],
  ['pt_BR', '21/04/2026'],
  ['nl_NL', '21-4-2026'],
  ['sv_SE', '2026-04-21'],
  ['en_GB', '21/04/2026'],
  ['en_US', '4/21/2026'],
])('in %s the day %s typed into a date cell is a date', (code, text) => {
  expect(typedIntoCell(text, 'yyyy-mm-dd', localeOf(code), 2026)).toEqual({ content: '46133' });
});

test('a number with a point is no day where days are not written with points', () => {
  expect(typedIntoCell('1.5', '', localeOf('en_US'), 2026)).toEqual({ content: '1.5' });
  expect(typedIntoCell('1,5', '', localeOf('de_DE'), 2026)).toEqual({ content: '1.5' });
  expect(typedIntoCell('1.234,5', '', localeOf('de_DE'), 2026)).toEqual({ content: '1234.5' });
});
