import { useState } from 'preact/hooks';
import { columnLetters } from '../../../shared/block/a1';
import { dayFromIso } from '../../../shared/core/calendar/day';
import { filledFigures, type MissingFigures, type RowWithout } from '../../../shared/lists/missing-figures';
import { decimalComma } from '../../../shared/locale/decimal-comma';
import { Button } from '../parts/button';
import { InputField } from '../parts/field';
import { Notice } from '../parts/notice';
import type { Book } from '../parts/use-book';
import { useChangeCells } from '../parts/use-change-cells';
import * as words from './words';

/** Asks for the areas or weights that a list lacks, and puts them into its own column. */
export function MissingFiguresAsked({ book, lacks }: { book: Book; lacks: MissingFigures }) {
  const [typed, setTyped] = useState<Readonly<Record<number, string>>>({});
  const work = useChangeCells();
  const { field, unit, tab, heading } = lacks;
  const column = columnLetters(lacks.column);
  const write = (): void =>
    work.change(
      () => {
        const { locale, today } = book.overview;
        const on = { comma: decimalComma(locale), today: dayFromIso(today) ?? 0 };
        const filled = filledFigures(lacks, typed, on);
        if ('problem' in filled) throw new Error(`${filled.problem} Nothing was written.`);
        return filled.cells;
      },
      words.doneColumn(column, tab),
    );
  const fields = (rows: readonly RowWithout[]) =>
    rows.map(({ row, name, cell, weighed = 'today', unread }) => (
      <InputField
        key={row}
        label={`${field === 'area' ? 'Area' : `Weight of one pig, as of ${weighed}`}: ${name} (${unit})`}
        hint={unread === undefined ? cell : `${cell}, in place of “${unread}”`}
        value={typed[row] ?? ''}
        onChange={(value) => setTyped((now) => ({ ...now, [row]: value }))}
      />
    ));
  const lone = lacks.rows.filter(({ isLone }) => isLone);
  const needed = lacks.rows.filter(({ isLone }) => !isLone);
  const form = (
    <>
      {fields(needed)}
      {needed.length === 0 ? fields(lone) : null}
      <Button disabled={work.busy} onPress={write}>
        {work.busy ? 'Writing…' : `Write into column ${column} of “${tab}”`}
      </Button>
      <p class="hint">
        {heading && words.newColumn(heading.text, `${column}${heading.row}`)}
        {lacks.weighedOn && words.WEIGHED_TODAY}
        {words.LEFT_BLANK}
      </p>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </>
  );
  if (needed.length > 0)
    return (
      <Notice kind="warning">
        the {field} is missing or cannot be read for {needed.map(({ name }) => `“${name}”`).join(', ')}.{form}
      </Notice>
    );
  return (
    <details>
      <summary>Names with nothing beside them on “{tab}”</summary>
      {form}
    </details>
  );
}
