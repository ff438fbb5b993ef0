/** Row by row over ranges: plain numbers the quick way, everything else with care. */
import type { AnyEntry, CellValue, Param } from '../catalogue/define';
import type { UnitSystem } from '../units/units';
import type { Edge } from './edge';
import { type Presenter, presenterOf } from './present';
import { type QuickReader, quickReader, readQuickly } from './quick-reader';
import { isBlank, readArgument } from './read-cell';
import { runWith } from './run-with';
import { sentenceFor } from './sentence';
import type { Cells, Shape } from './shape';

interface Request {
  readonly entry: AnyEntry;
  readonly ready: readonly {
    readonly param: Param;
    readonly value: unknown;
    readonly cells: Cells | undefined;
  }[];
  readonly shape: Shape;
  readonly system: UnitSystem;
  readonly edge: Edge;
}

interface RangeArgument {
  readonly param: Param;
  /** Its place among the values handed to the core. */
  readonly at: number;
  readonly cells: Cells;
  readonly reader: QuickReader;
}

/** A request with all that every row needs. */
interface Job extends Request {
  /** Values for the core: the single ones stay, those of ranges are set anew for every row. */
  readonly values: unknown[];
  readonly ranges: readonly RangeArgument[];
  readonly required: readonly RangeArgument[];
  readonly presenter: Presenter;
  readonly run: AnyEntry['run'];
}

/** The answers over ranges of one shape: as many rows as there are, all equally long. */
export function columnAnswers(request: Request): CellValue[][] {
  const job = makeJob(request);
  const { rows, columns } = request.shape;
  const out: CellValue[][] = [];
  if (request.entry.result.kind !== 'value') {
    for (let r = 0; r < rows; r++) out.push(rowAnswer(job, r));
    return padded(out, job.presenter.width);
  }
  for (let r = 0; r < rows; r++) {
    // An array that is written as a whole is a good deal cheaper than one that grows.
    const row: CellValue[] = [columns > 0 ? valueAnswer(job, r, 0) : ''];
    for (let c = 1; c < columns; c++) row.push(valueAnswer(job, r, c));
    out.push(row);
  }
  return out;
}

function makeJob(request: Request): Job {
  const { entry, ready, system } = request;
  const ranges = ready.flatMap(({ param, cells }, at) =>
    cells ? [{ param, at, cells, reader: quickReader(param, system) }] : [],
  );
  return {
    ...request,
    values: ready.map(({ value }) => value),
    ranges,
    required: ranges.filter(({ param }) => !param.optional),
    presenter: presenterOf(entry.result, system),
    run: entry.run,
  };
}

/** The cell of a function that answers one value. */
function valueAnswer(job: Job, r: number, c: number): CellValue {
  try {
    if (!fillQuickly(job, r, c) && !fillWithCare(job, r, c)) return '';
    return job.presenter.number(runWith(job.run, job.values) as number);
  } catch (error) {
    return sentenceFor(error, job.entry.name, job.system);
  }
}

/** The cells of a function that answers a row. */
function rowAnswer(job: Job, r: number): CellValue[] {
  try {
    if (!fillQuickly(job, r, 0) && !fillWithCare(job, r, 0)) return [''];
    return job.presenter.cells(runWith(job.run, job.values));
  } catch (error) {
    return [sentenceFor(error, job.entry.name, job.system)];
  }
}

/** Sets the values of one cell where all of them are plain numbers within limits; false where one is not. */
function fillQuickly({ ranges, values }: Job, r: number, c: number): boolean {
  for (let k = 0; k < ranges.length; k++) {
    const { reader, cells, at } = ranges[k]!;
    const value = readQuickly(reader, cells[r]![c]);
    if (Number.isNaN(value)) return false;
    values[at] = value;
  }
  return true;
}

/** The same for any cells, or false where nothing required stands in the row: an empty line of the sheet. */
function fillWithCare({ ranges, required, values, system, edge }: Job, r: number, c: number): boolean {
  if (required.length > 0 && required.every(({ cells }) => isBlank(cells[r]?.[c]))) return false;
  for (const { param, at, cells } of ranges) values[at] = readArgument(param, cells[r]?.[c], system, edge);
  return true;
}

/** Rows that hold a message or a blank, or an open row that is short, are filled up with blanks. */
function padded(rows: CellValue[][], atLeast: number): CellValue[][] {
  const width = rows.reduce((widest, row) => Math.max(widest, row.length), atLeast);
  if (rows.every((row) => row.length === width)) return rows;
  return rows.map((row) =>
    row.length < width ? [...row, ...new Array<string>(width - row.length).fill('')] : row,
  );
}
