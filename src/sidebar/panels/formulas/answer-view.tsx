import type { AnyEntry, CellValue, ColumnOut } from '../../../../shared/catalogue/define';
import type { Answer } from '../../../../shared/door/call';
import { symbolOf, type UnitSystem } from '../../../../shared/units/units';
import { formatNumber } from '../../numbers/format-number';
import { Cautions } from '../../parts/cautions';
import { ScrollRegion } from '../../parts/scroll-region';
import { inWords, type Outcome } from './work-out';

interface Props {
  readonly entry: AnyEntry;
  readonly outcome: Outcome;
  readonly units: UnitSystem;
  readonly waiting: boolean;
}

/** The answer as it would stand in the sheet, or why there is none. */
export function AnswerView({ entry, outcome, units, waiting }: Props) {
  return (
    <section class="answer" aria-labelledby="answer-heading">
      <h3 id="answer-heading">Answer</h3>
      <div aria-live="polite">
        {waiting ? <p>Reading cells…</p> : <OutcomeView entry={entry} outcome={outcome} units={units} />}
      </div>
      {outcome.kind === 'answer' && entry.cautions && <Cautions sentences={entry.cautions} />}
    </section>
  );
}

function OutcomeView({ entry, outcome, units }: Omit<Props, 'waiting'>) {
  if (outcome.kind === 'unfinished') return <p>Fill in {list(outcome.missing.map(inWords))}.</p>;
  if (outcome.kind === 'refused') return <p class="problem-text">{outcome.sentence}</p>;
  return <AnswerCells entry={entry} answer={outcome.answer} units={units} />;
}

function AnswerCells({ entry, answer, units }: { entry: AnyEntry; answer: Answer; units: UnitSystem }) {
  const { result } = entry;
  if (!Array.isArray(answer)) {
    const unit = result.kind === 'lines' ? '' : result.kind === 'row' ? '' : unitOf(result, units);
    return (
      <p class="big">
        {shown(answer)} {unit && <span class="unit">{unit}</span>}
      </p>
    );
  }
  return <AnswerTable heads={headsOf(entry, answer[0]?.length ?? 0, units)} rows={answer} />;
}

/** Long answers are cut in the page; the sheet gets all of them. */
const MOST_ROWS = 8;

function AnswerTable({ heads, rows }: { heads: readonly string[]; rows: readonly CellValue[][] }) {
  const more = rows.length - MOST_ROWS;
  return (
    <ScrollRegion label="Answer table">
      <table>
        <thead>
          <tr>
            {heads.map((head, i) => (
              <th key={i} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.slice(0, MOST_ROWS).map((row, r) => (
            <tr key={r}>
              {row.map((cell, c) => (
                <td key={c} class={typeof cell === 'number' ? 'number' : undefined}>
                  {cell === '' ? '(blank)' : shown(cell)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {more > 0 && <p>and {more} more rows</p>}
    </ScrollRegion>
  );
}

function headsOf({ result }: AnyEntry, width: number, units: UnitSystem): string[] {
  if (result.kind === 'lines') return [result.label, 'amount', 'unit'].slice(0, width);
  if (result.kind === 'row') return result.columns.map((column) => headOf(column, units));
  return Array.from({ length: width }, (_, i) =>
    width === 1 ? headOf(result, units) : `${headOf(result, units)} ${i + 1}`,
  );
}

function headOf(column: ColumnOut, units: UnitSystem): string {
  const unit = unitOf(column, units);
  return unit ? `${column.label} (${unit})` : column.label;
}

function unitOf(column: ColumnOut, units: UnitSystem): string {
  return column.quantity ? symbolOf(column.quantity, units) : (column.unit ?? '');
}

function shown(cell: CellValue): string {
  if (typeof cell === 'number') return formatNumber(cell);
  return typeof cell === 'boolean' ? String(cell).toUpperCase() : cell;
}

function list(names: readonly string[]): string {
  const [last = '', ...before] = [...names].reverse();
  return before.length === 0 ? last : `${before.reverse().join(', ')} and ${last}`;
}
