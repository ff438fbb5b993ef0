/** A task from the sheet to the written block without a page, on the built script over the engine. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { Book } from '../../shared/block/book';
import type { CallName } from '../../shared/contract';
import { BITE_TASK, LINES_LABEL } from '../../shared/tasks/bite/bite-task';
import { BUDGET_TASK } from '../../shared/tasks/budget/budget-task';
import { MATERIALS_TASK } from '../../shared/tasks/materials/materials-task';
import { TAB_LABEL } from '../../shared/tasks/place';
import { type Port, readBook, runTask as run, writeTask } from '../../shared/tasks/run-task';
import type { Answers, Task } from '../../shared/tasks/task';
import { PEN_TASK } from '../../shared/tasks/training/pen-task';
import { openWorkbook, portOf, runTask, type Workbook } from '../../src/headless';
import { buildRotation } from '../hard-use/rotation-task';
import { scriptText } from './script-text';

let codeJs: string;
beforeAll(async () => {
  codeJs = await scriptText();
});

const PADDOCKS = [
  ['Paddock', 'Acres'],
  ['North', 0.5],
  ['South', 0.7],
  ['Oak', 0.6],
];
const PIGS = [
  ['Group', 'Head', 'Weight (lb)', 'Weighed on', 'ADG (lb/day)'],
  ['Reds', 10, 60, { d: '2026-03-28' }, 1.5],
];

function farm(): Promise<Workbook> {
  return openWorkbook({ tabs: { Land: PADDOCKS, Pigs: PIGS }, codeJs, today: '2026-04-01' });
}

async function written<Plan>(book: Workbook, task: Task<Plan>, answers: Answers = {}, how = {}) {
  const outcome = await runTask(portOf(book), task, answers, how);
  if (outcome.kind !== 'written') throw new Error(JSON.stringify(outcome));
  return outcome;
}

/** The cell beside a label. */
function cellBeside(book: Workbook, tab: string, label: string): string {
  return `B${book.values(tab).findIndex(([first]) => first === label) + 1}`;
}

describe('the whole way', () => {
  it('asks for what is missing, in words, and writes once it is answered', async () => {
    const book = await farm();
    const line = { Name: 'Lane', Length: '1300', 'Live wires': '1', Wire: 'No such wire' };
    const unsaid = { ...line, Name: '', Length: '', Wire: 'Polywire, 6 stainless' };
    expect(await runTask(portOf(book), BITE_TASK, { [LINES_LABEL]: [unsaid] })).toEqual({
      kind: 'questions',
      questions: ['Line 1: length is missing'],
    });
    const asked = await runTask(portOf(book), BITE_TASK, { [LINES_LABEL]: [line] });
    expect(asked).toMatchObject({ questions: ['Lane: wire must be one of the list, got “No such wire”'] });
    const lines = [{ ...line, Wire: 'Polywire, 6 stainless' }];
    const { done } = await written(book, BITE_TASK, {
      [LINES_LABEL]: lines,
      'Energizer, volts without load': '7100',
      [TAB_LABEL]: 'Volts',
    });
    expect(done.block).toMatchObject({ name: 'SOUNDER_BITE', tab: 'Volts' });
    expect(book.value('Volts', cellBeside(book, 'Volts', 'Energizer, volts without load'))).toBe(7100);
    // A second time nothing is asked that the sheet says.
    expect((await written(book, BITE_TASK)).done.kept).toEqual({ inPlace: [], below: [] });
    expect(book.value('Volts', cellBeside(book, 'Volts', 'Energizer, volts without load'))).toBe(7100);
  });

  it('a wrong number and a tab that there is are told, and nothing is written', async () => {
    const book = await farm();
    expect(await runTask(portOf(book), PEN_TASK, { Pigs: '0' })).toMatchObject({
      kind: 'questions',
      questions: ['Pigs must be 1 or more, got 0'],
    });
    expect(await runTask(portOf(book), PEN_TASK, { [TAB_LABEL]: 'land' })).toMatchObject({
      kind: 'refused',
      sentence: 'There is already a tab of this name. Choose another. Nothing was written.',
    });
    expect(book.spreadsheet.getSheets().map((sheet) => sheet.getName())).toEqual(['Land', 'Pigs']);
  });

  it('answers that no field asks for, or no option is, are an error of whoever gives them', async () => {
    const port = portOf(await farm());
    await expect(run(port, PEN_TASK, { 'Number of pigs': '9' })).rejects.toThrow(
      'The form does not ask for Number of pigs. It asks for: ',
    );
    await expect(run(port, MATERIALS_TASK, { 'Where paddocks touch': 'somewhere' })).rejects.toThrow(
      '“Where paddocks touch” must be one of Side by side along their lengths, ',
    );
  });
});

describe('every task remembers what it was made from', () => {
  it('the list, by its words, wherever it stands and whatever better list has come into the file', async () => {
    const book = await farm();
    await written(book, MATERIALS_TASK);
    const better = [...PADDOCKS[0]!, 'Rest days', 'Open from'];
    book.spreadsheet.insertSheet('A better list');
    for (const [r, row] of [better, ['East', 2, 30, '2026-05-01'], ['West', 3, 30, '2026-05-01']].entries())
      for (const [c, cell] of row.entries()) book.type('A better list', `${'ABCD'[c]}${r + 1}`, String(cell));
    book.insertRows('Land', 1, 2);
    const { plan } = await written(book, MATERIALS_TASK);
    expect(plan.list?.list.tab).toBe('Land');
    const paddocks = plan.layout.kind === 'list' ? plan.layout.paddocks : [];
    expect(paddocks.map(({ name }) => name)).toEqual(['North', 'South', 'Oak']);
  });

  it('a budget of the lists stays one when a table of moves comes into the file', async () => {
    const book = await farm();
    await written(book, BUDGET_TASK);
    await buildRotation(book, { units: 'US' });
    const origin = () => book.value('Feed and water', 'A2');
    const before = origin();
    await written(book, BUDGET_TASK);
    expect(origin()).toBe(before);
    await written(book, BUDGET_TASK, { 'Which stays?': 'The moves planned on “Rotation”' });
    expect(origin()).not.toBe(before);
  });
});

describe('what was typed over something of ours', () => {
  it('stays and is named, and gives way where ours is asked for', async () => {
    const book = await farm();
    await written(book, MATERIALS_TASK);
    const tab = 'Fence materials';
    const row = book.values(tab).findIndex(([first]) => first === 'Rolls of wire') + 1;
    const ours = book.formula(tab, `B${row}`);
    expect(ours).not.toBe('');
    book.type(tab, `B${row}`, '17');
    const typed = [`B${row} (17)`];
    expect((await written(book, MATERIALS_TASK)).done.kept).toEqual({
      inPlace: typed,
      below: [],
    });
    expect(book.value(tab, `B${row}`)).toBe(17);
    const back = await written(book, MATERIALS_TASK, {}, { putBack: true });
    expect(back.done.kept).toEqual({ inPlace: [], below: [], gaveWay: typed });
    expect(book.formula(tab, `B${row}`)).toBe(ours);
    expect((await written(book, MATERIALS_TASK)).done.kept).toEqual({ inPlace: [], below: [] });
  });
});

/** Where a new tab came to stand is not known without reading. */
function inOrder({ overview, tabs }: Book): Book {
  const byName = <Named extends { name: string }>(all: readonly Named[]): Named[] =>
    [...all].sort((a, b) => (a.name < b.name ? -1 : 1));
  return { overview: { ...overview, tabs: byName(overview.tabs) }, tabs: byName(tabs) };
}

describe('what a write gives back', () => {
  it.each([
    ['a first table', 0],
    ['a table written anew', 1],
  ])('%s: the file as it stands, so that nothing is read again', async (_, times) => {
    const book = await farm();
    // What still calculates is read as such, and as its answer later.
    book.state.modes.loadingReads = 0;
    const port = portOf(book);
    for (let time = 0; time < times; time++) await written(book, BUDGET_TASK);
    const read = await readBook(port);
    const calls: CallName[] = [];
    const counting: Port = (name, request) => {
      calls.push(name);
      return port(name, request);
    };
    const { after } = await writeTask(counting, BUDGET_TASK, read, BUDGET_TASK.read(read, {}), {});
    expect(calls).toEqual(['writeBlock']);
    expect(inOrder(after!)).toEqual(inOrder(await readBook(port)));
  });
});

describe('between reading and the button', () => {
  it('another tab was typed into: the table is composed from what stands now', async () => {
    const book = await farm();
    const port = portOf(book);
    const read = await readBook(port);
    const seen = MATERIALS_TASK.read(read, {});
    book.insertRows('Land', 1, 2);
    await writeTask(port, MATERIALS_TASK, read, seen, {});
    const formulas = book.formulas('Fence materials').flat().join(' ');
    expect(formulas).toContain('Land!$B$4');
    expect(formulas).not.toContain('Land!$B$2:');
  });

  it('what was typed in the sheet counts; answered as well, it is refused by its field', async () => {
    const book = await farm();
    await written(book, PEN_TASK);
    const port = portOf(book);
    const tab = 'Training pen';
    const at = cellBeside(book, tab, 'Pigs');
    const read = await readBook(port);
    const seen = PEN_TASK.read(read, {});
    book.type(tab, at, '23');
    await writeTask(port, PEN_TASK, read, seen, {});
    expect(book.value(tab, at)).toBe(23);
    book.type(tab, at, '5');
    await expect(writeTask(port, PEN_TASK, read, seen, { Pigs: '11' })).rejects.toThrow(
      '“Pigs” was changed in the sheet after the page had read it.',
    );
    expect(book.value(tab, at)).toBe(5);
  });

  it('another figure in the list is named by its cell', async () => {
    const book = await farm();
    const port = portOf(book);
    const read = await readBook(port);
    const seen = MATERIALS_TASK.read(read, {});
    book.type('Land', 'B3', '1.1');
    await expect(writeTask(port, MATERIALS_TASK, read, seen, {})).rejects.toThrow(
      'Your lists have changed: Land!B3.',
    );
  });
});
