import { columnLetters } from '../../../shared/block/a1';
import { firstOf, headingText, unusedHeadings, withColumn } from '../../../shared/lists/list-columns';
import { MEMORY_LABELS } from '../../../shared/lists/list-memory';
import {
  FIELD_LABELS,
  type FoundList,
  GROUP_FIELDS,
  type ListKind,
  PADDOCK_FIELDS,
} from '../../../shared/lists/model';
import { Button } from '../parts/button';
import { SelectField } from '../parts/field';
import { Hints } from '../parts/sentence';
import type { Lists } from './use-lists';
import * as words from './words';

interface Props {
  readonly kind: ListKind;
  readonly lists: Lists;
  /** How many were read, in words, for example "10 paddocks, 6.4 ac". */
  readonly summary: string;
  /** The grower points at the heading row in the sheet. */
  readonly onPoint: () => void;
}

/** Which heading was taken for what, in one line: “Hectares” as area. */
function readAs(list: FoundList): string {
  const columns = Object.entries(list.columns) as [keyof typeof FIELD_LABELS, number][];
  return columns
    .map(([field, column]) => `“${headingText(list, column)}” as ${FIELD_LABELS[field]}`)
    .join(', ');
}

/** A column that is not understood, such as a day to leave, must not go unnoticed. */
function Unused({ list }: { list: FoundList }) {
  const unused = unusedHeadings(list);
  return unused.length > 0 ? <p class="hint">Columns not used: {unused.join(', ')}.</p> : null;
}

/** Which list is meant and which heading was taken for what; all of it can be changed. */
export function ListPicker({ kind, lists, summary, onPoint }: Props) {
  const label = MEMORY_LABELS[kind];
  const found = lists.found[kind];
  const list = lists.chosen[kind];
  return (
    <section aria-label={label}>
      <h3>{label}</h3>
      {list ? (
        <>
          {found.length > 1 && (
            <SelectField
              label="Which list"
              value={String(
                Math.max(
                  0,
                  found.findIndex((other) => samePlace(other, list)),
                ),
              )}
              options={found.map((other, i) => ({ value: String(i), text: placeWords(other) }))}
              onChange={(value) => {
                const chosen = found[Number(value)];
                if (chosen) lists.choose(chosen);
              }}
            />
          )}
          <p>
            {found.length > 1 ? '' : `${placeWords(list)}. `}
            <strong>{summary}</strong>
          </p>
          <p class="hint">Read: {readAs(list)}.</p>
          <Unused list={list} />
          <details open={list.missing.length > 0}>
            <summary>Which heading stands for what</summary>
            <Columns list={list} lists={lists} />
          </details>
        </>
      ) : (
        <p>
          No {label.toLowerCase()} was found. {NEEDS[kind]}
        </p>
      )}
      <Hints sentences={lists.notes[kind]} />
      {kind === 'paddocks' && list && <RemarkOffers list={list} lists={lists} />}
      <details open={!list}>
        <summary>The list is somewhere else</summary>
        <p class="hint">{words.SELECT_CELL}</p>
        <Button onPress={onPoint}>This is my {label.toLowerCase()}</Button>
      </details>
    </section>
  );
}

/** Remarks with a day in them may be what keeps the pigs out: one press takes their column for “open from”. */
function RemarkOffers({ list, lists }: { list: FoundList; lists: Lists }) {
  const columns = [...new Set(lists.remarks.map(({ column }) => column))];
  return columns.map((column) => (
    <Button key={column} onPress={() => lists.choose(withColumn(list, 'openFrom', column))}>
      Use the days in “{headingText(list, column)}” as “open from”
    </Button>
  ));
}

const NEEDS: Readonly<Record<ListKind, string>> = {
  paddocks: words.PADDOCK_HEADINGS,
  groups: words.GROUP_HEADINGS,
};

function samePlace(a: FoundList, b: FoundList): boolean {
  return a.tab === b.tab && a.headingRow === b.headingRow && a.columns.name === b.columns.name;
}

function placeWords(list: FoundList): string {
  return `On “${list.tab}”, headings in row ${list.headingRow}`;
}

const NONE = '';

function Columns({ list, lists }: { list: FoundList; lists: Lists }) {
  const fields = list.kind === 'paddocks' ? PADDOCK_FIELDS : GROUP_FIELDS;
  const columns: Readonly<Record<string, number>> = list.columns;
  const units: Readonly<Record<string, string>> = list.units;
  const options = [
    { value: NONE, text: '(not in the list)' },
    ...list.headings.map(({ column, text }) => ({
      value: String(column),
      text: `${columnLetters(column)}: ${text}`,
    })),
  ];
  return (
    <>
      {fields.map((field) => {
        const column = columns[field];
        const unit = units[field];
        const needed = list.missing.some((missing) => missing === field);
        return (
          <SelectField
            key={field}
            label={capital(FIELD_LABELS[field])}
            hint={
              column === undefined
                ? undefined
                : [
                    firstOf(lists.tabOf(list), list, column),
                    unit && !headingText(list, column).includes(unit) ? `in ${unit}` : '',
                  ]
                    .filter(Boolean)
                    .join(', ')
            }
            problem={needed ? words.NEEDED : undefined}
            value={column === undefined ? NONE : String(column)}
            options={options}
            onChange={(value) =>
              lists.choose(withColumn(list, field, value === NONE ? undefined : Number(value)))
            }
          />
        );
      })}
    </>
  );
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
