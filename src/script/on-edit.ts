/**
 * What follows when somebody ticks a box on today's page: the day goes into Moved in of the group's next move, and the
 * tick goes. A simple trigger runs at every edit in the file, so it leaves at once unless the edit can be such a tick.
 */
import { BOX_COLUMN, NOT_WRITTEN, TICK } from '../../shared/tasks/today/tick-words';
import { failureSentence } from './failure-sentence';

/** What the trigger is given: the value only where one cell was edited, the place without a call to the service. */
export interface Edit {
  readonly value?: unknown;
  readonly range: { readonly columnStart?: number };
}

/** Today's page, with the ticked box on it. */
export interface TickedPage {
  readonly row: number;
  readonly column: number;
  readonly values: readonly (readonly unknown[])[];
  readonly formulas: readonly (readonly string[])[];
  /** Takes the tick away and says something beside the box. */
  untick(says: string): void;
  /** Writes a day into the cell at a place, from 1, of a range of one column, and waits until it is there. */
  writeDay(range: string, place: number, day: unknown): void;
}

/** Whether it can be a tick on today's page, by the event alone. */
export function mayBeTick({ value, range }: Edit): boolean {
  const { columnStart = BOX_COLUMN } = range;
  return columnStart === BOX_COLUMN && String(value) === 'TRUE';
}

export function recordMove(page: TickedPage): void {
  const { values, formulas } = page;
  const head = values.find((row) => row.includes(TICK.row)) ?? [];
  const at = (key: keyof typeof TICK): number => head.indexOf(TICK[key]);
  const line = values.findIndex((row) => row[at('row')] === page.row && row[at('column')] === page.column);
  const cell = (key: keyof typeof TICK): unknown => values[line]?.[at(key)];
  // A box of the grower's own, on the same page.
  if (line < 0) return;
  const [, range = ''] = /^=ROWS\((.+)\)$/i.exec(formulas[line]?.[at('days')] ?? '') ?? [];
  const place = Number(cell('next'));
  const refusal = cell('refusal');
  // The tick goes first: cut short here, the page looks as before and is ticked again.
  page.untick(refusal === '' ? '' : `${NOT_WRITTEN}${refusal}.`);
  if (refusal !== '') return;
  try {
    page.writeDay(range, place, cell('today'));
  } catch (error) {
    page.untick(NOT_WRITTEN + failureSentence(error));
  }
}
