import { useState } from 'preact/hooks';
import { type Day, dayFromIso } from '../../../../shared/core/calendar/day';
import type { ReadGroup } from '../../../../shared/lists/model';
import { nameKey } from '../../../../shared/lists/read-list-cell';
import { startUnits } from '../../../../shared/lists/start-units';
import { decimalComma } from '../../../../shared/locale/decimal-comma';
import { groupWeightOn } from '../../../../shared/plan/group-weights';
import { herdOn } from '../../../../shared/plan/herd-on';
import { HERD_BLOCK, type HerdEntry, herdBlock, herdRow } from '../../../../shared/tasks/herd/herd-block';
import { readHerd } from '../../../../shared/tasks/herd/read-herd';
import { NEW_TABLE } from '../../../../shared/tasks/room-to-type';
import { readUnits } from '../../../../shared/tasks/settings';
import { fromInside, symbolOf, type UnitSystem } from '../../../../shared/units/units';
import { useLists } from '../../lists/use-lists';
import { dayWords } from '../../parts/day-words';
import { InputField, SelectField } from '../../parts/field';
import { standingAndBelow } from '../../parts/grown-block';
import { NotPart } from '../../parts/not-part';
import { Notice } from '../../parts/notice';
import type { Book } from '../../parts/use-book';
import { WriteBlock } from '../../parts/write-block';
import { oldTable } from '../rotation/old-table';
import { readChange, type TypedChange } from './read-change';

export function HerdSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const { locale, today } = book.overview;
  const old = standingAndBelow(book, HERD_BLOCK);
  const units: UnitSystem = (old && readUnits(old.content)) ?? startUnits(book);
  const lists = useLists(book, units, oldTable(book)?.rotation.settings?.lists);
  const names = lists.groups.map(({ name }) => name);
  const [typed, setTyped] = useState<TypedChange>({ group: '', day: today, head: '', weight: '', note: '' });
  const change = (part: Partial<TypedChange>): void => setTyped({ ...typed, ...part });
  const group = typed.group === '' ? (names[0] ?? '') : typed.group;
  const read = readChange({ ...typed, group }, units, decimalComma(locale));
  const problem = 'problem' in read ? read.problem : undefined;
  const standing = old && readHerd(old.content);
  return (
    <>
      {lists.groups.length === 0 && (
        <Notice kind="note">There is no group list in this file yet: the log begins from it.</Notice>
      )}
      <h2>Now</h2>
      <ul>
        {lists.groups.map((one) => (
          <li key={one.name}>{nowWords(one, dayFromIso(today) ?? 0, units)}</li>
        ))}
      </ul>
      {lists.notes.groups.length > 0 && (
        <Notice kind="warning">
          <ul>
            {lists.notes.groups.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </Notice>
      )}
      <h2>What has changed</h2>
      <SelectField
        label="Group"
        value={group}
        options={names.map((name) => ({ value: name, text: name }))}
        onChange={(name) => change({ group: name })}
      />
      <InputField
        type="date"
        label="From which day on"
        value={typed.day}
        onChange={(day) => change({ day })}
      />
      <InputField
        label="Head from then on"
        hint="Sold, died, joined: how many there are now. 0 when the last has gone."
        problem={problem}
        value={typed.head}
        onChange={(head) => change({ head })}
      />
      <InputField
        label={`Weight each, if weighed (${symbolOf('mass', units)})`}
        value={typed.weight}
        onChange={(weight) => change({ weight })}
      />
      <InputField label="Note" value={typed.note} onChange={(note) => change({ note })} />
      <p class="hint">
        Leave head and weight empty to write the log without a new row, and type into the sheet. A group that
        is not in it yet gets a first row from your list: from then on the log counts, and what you change in
        the list changes nothing that is past.
      </p>
      <NotPart apart={old?.apart} />
      <WriteBlock
        adoptRows={old?.adoptRows}
        name={HERD_BLOCK}
        what="the herd log"
        tabName="Herd log"
        book={book}
        notYet={problem || names.length === 0 ? 'Something above is still missing or wrong.' : undefined}
        compose={(corner, now) => {
          const { rows, entries, lines } = now ? readHerd(now) : { rows: [], entries: [], lines: 0 };
          const room = { ...NEW_TABLE, ...(old && { lines, below: old.below }) };
          const firsts = lists.groups
            .filter(({ name }) => entries.every((entry) => nameKey(entry.group) !== nameKey(name)))
            .map((one) => herdRow(firstOf(one), 'from the list', units));
          const added = 'entry' in read ? [herdRow(read.entry, typed.note, units)] : [];
          return herdBlock([...rows, ...firsts, ...added], units, corner, room);
        }}
        onDone={() => {
          setTyped({ ...typed, head: '', weight: '', note: '' });
          onReread();
        }}
      />
      {standing && (
        <p class="hint">
          Build the rotation table anew (“Plan the moves”), so that its moves to come read the log, and
          today’s page after it.
        </p>
      )}
    </>
  );
}

/** A group as its list has it, on the day of its weighing. */
function firstOf({ name, head, weightKg, weighedOn }: ReadGroup): HerdEntry {
  return { group: name, day: weighedOn, head, weightKg };
}

function nowWords(group: ReadGroup, today: Day, units: UnitSystem): string {
  const { head, weighedOn } = herdOn(group, today);
  const weight = Math.round(fromInside(groupWeightOn(group, today), 'mass', units));
  return `${group.name}: ${head} head, about ${weight} ${symbolOf('mass', units)} each; weighed last on ${dayWords(weighedOn)}.`;
}
