/** What cell functions of the script receive and may return, as Google's custom-functions guide says. */
import { expect, test } from 'vitest';
import { openWorkbook } from '../../src/headless';
import { readScript } from '../../src/preview/script/read-script';
import { codeJs } from './fixture';

const tabs = { A: [['North', 2, null, '2026-04-01', true, '=NA()', '50%']] };

test.each([
  ['A1', '[object String] "North"'],
  ['B1', '[object Number] 2'],
  ['C1', '[object String] ""'],
  ['D1', '[object Date] "2026-04-01T00:00:00.000Z"'],
  ['E1', '[object Boolean] true'],
  ['G1', '[object Number] 0.5'],
  ['A1:A1', '[object String] "North"'],
  ['A1:B1', '[object Array] [["North",2]]'],
  ['B1:B2', '[object Array] [[2],[""]]'],
  ['E1:F1', '[object Array] [[true,"#N/A"]]'],
  ['', '[object Undefined] undefined'],
])('%s arrives as %s', async (argument, arrives) => {
  const book = await openWorkbook({ tabs, codeJs });
  expect(book.evaluate(`=DESCRIBE_TEST(${argument})`)).toBe(arrives);
});

test('single values, spilled arrays and blanks come back; what a cell cannot hold is an error', async () => {
  const book = await openWorkbook({ tabs, codeJs });
  expect(book.evaluate('=RETURN_TEST("rows")')).toEqual([
    [1, 'a'],
    [true, ''],
  ]);
  expect(book.evaluate('=RETURN_TEST("flat")')).toEqual([[1], [2]]);
  expect(book.evaluate('=RETURN_TEST("nothing")')).toBe('');
  expect(book.evaluate('=RETURN_TEST("nan")')).toBe('#NUM!');
  expect(book.evaluate('=RETURN_TEST("ragged")')).toBe('#ERROR!');
  expect(book.evaluate('=RETURN_TEST("object")')).toBe('#ERROR!');
});

test('a whole column is one call, a blocked spill is #REF!', async () => {
  const book = await openWorkbook({ tabs: { A: [[1], [2], [3]] }, codeJs });
  book.resetCounts();
  book.type('A', 'B1', '=DOUBLE_TEST(A1:A3)');
  expect(book.values('A')).toEqual([
    [1, 2],
    [2, 4],
    [3, 6],
  ]);
  expect(book.cellCalls).toEqual({ DOUBLE_TEST: 1 });
  book.type('A', 'B2', 'in the way');
  expect(book.value('A', 'B1')).toBe('#REF!');
});

test('a refusal is an error cell with the message; IFERROR catches it; too few arguments reach the function', async () => {
  const book = await openWorkbook({
    tabs: { A: [['=FENCE_TEST("x"; 1)', '=IFERROR(A1; "caught")', '=FENCE_TEST()']] },
    codeJs,
  });
  expect(book.values('A')).toEqual([['#ERROR!', 'caught', '#ERROR!']]);
  expect(book.message('A', 'A1')).toBe('FENCE_TEST: width must be a number, got "x"');
  expect(book.message('A', 'C1')).toBe('FENCE_TEST: width must be a number, got undefined');
});

test('a cell function may not write', async () => {
  const book = await openWorkbook({ tabs: { A: [['keep', '=WRITE_TEST()']] }, codeJs });
  expect(book.values('A')).toEqual([['keep', '#ERROR!']]);
  expect(book.message('A', 'B1')).toBe('You do not have permission to call setValues');
});

test('a workbook without the script does not know its functions', async () => {
  await openWorkbook({ tabs, codeJs });
  const other = await openWorkbook({ tabs: { A: [['=FENCE_TEST(1;2)']] } });
  expect(other.value('A', 'A1')).toBe('#NAME?');
});

test('help is read from the text of the script', () => {
  const [fence] = readScript(codeJs).cellFunctions;
  expect(fence).toEqual({
    name: 'FENCE_TEST',
    description: 'Round a rectangle: 2 × (width + length) × strands.',
    parameters: [
      { name: 'width', help: 'Width of the field.' },
      { name: 'length', help: 'Length of the field.' },
      { name: 'strands', help: 'Optional. Wires, one unless given.' },
    ],
  });
});
