import { useState } from 'preact/hooks';
import { dayFromIso } from '../../../../shared/core/calendar/day';
import { decimalComma } from '../../../../shared/locale/decimal-comma';
import { readTyped } from '../../../../shared/locale/read-typed';
import { readWalk } from '../../../../shared/tasks/bite/read-walk';
import {
  readingRow,
  WALK_BLOCK,
  WALK_CAUTION,
  WALK_SETTINGS,
  walkBlock,
} from '../../../../shared/tasks/bite/walk-block';
import { type Reading, walkSentence, walksOf } from '../../../../shared/tasks/bite/walk-log';
import { NEW_TABLE } from '../../../../shared/tasks/room-to-type';
import { Cautions } from '../../parts/cautions';
import { dayWords } from '../../parts/day-words';
import { InputField } from '../../parts/field';
import { standingAndBelow } from '../../parts/grown-block';
import { NotPart } from '../../parts/not-part';
import { Notice } from '../../parts/notice';
import { SettingsFields } from '../../parts/settings-fields';
import { useSettings } from '../../parts/settings-state';
import type { Book } from '../../parts/use-book';
import { WriteBlock } from '../../parts/write-block';
import { VoltTrend } from './volt-trend';

interface TypedReading {
  readonly day: string;
  readonly place: string;
  readonly volts: string;
  readonly found: string;
}

export function WalkSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const { locale, today } = book.overview;
  const on = { units: 'US', comma: decimalComma(locale) } as const;
  const old = standingAndBelow(book, WALK_BLOCK);
  const standing = old && readWalk(old.content);
  const settings = useSettings(WALK_SETTINGS, standing?.settings.values ?? {}, on);
  const [typed, setTyped] = useState<TypedReading>({ day: today, place: '', volts: '', found: '' });
  const read = readReading(typed, on.comma);
  const reading = 'problem' in read ? undefined : read.reading;
  const change = (part: Partial<TypedReading>): void => setTyped({ ...typed, ...part });
  const walks = walksOf(standing?.readings ?? []);
  const level = settings.read.values.level ?? 0;
  const problem = 'problem' in read ? read.problem : undefined;
  return (
    <>
      {standing && (
        <>
          <h2>So far</h2>
          <VoltTrend walks={walks} level={level} />
          <p>{walkSentence(walks, level, dayWords)}</p>
        </>
      )}
      {(standing?.problems.length ?? 0) > 0 && (
        <Notice kind="warning">
          Rows that cannot be counted (they are kept):
          <ul>
            {standing?.problems.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </Notice>
      )}
      <h2>A reading</h2>
      <InputField type="date" label="Date" value={typed.day} onChange={(day) => change({ day })} />
      <InputField
        label="Place"
        hint="For example “far corner, Lane 3”."
        value={typed.place}
        onChange={(place) => change({ place })}
      />
      <InputField
        label="Volts"
        problem={problem}
        value={typed.volts}
        onChange={(volts) => change({ volts })}
      />
      <InputField label="What was found" value={typed.found} onChange={(found) => change({ found })} />
      <SettingsFields specs={WALK_SETTINGS} {...settings} {...on} onChange={settings.setTyped} />
      <Cautions sentences={[WALK_CAUTION]} />
      <p class="hint">
        Leave the volts empty to write the log without a new reading, and type into the sheet.
      </p>
      <NotPart apart={old?.apart} />
      <WriteBlock
        adoptRows={old?.adoptRows}
        name={WALK_BLOCK}
        what="the fence walk log"
        tabName="Fence walk"
        book={book}
        notYet={
          problem !== undefined || !settings.read.ok
            ? 'Something above is still missing or wrong.'
            : undefined
        }
        compose={(corner, now) => {
          const { rows, lines } = now ? readWalk(now) : { rows: [], lines: 0 };
          const room = { ...NEW_TABLE, ...(old && { lines, below: old.below }) };
          const all = reading ? [...rows, readingRow(reading)] : rows;
          return walkBlock(all, settings.read.values, corner, room);
        }}
        onDone={() => {
          setTyped({ ...typed, volts: '', found: '' });
          onReread();
        }}
      />
    </>
  );
}

function readReading(
  typed: TypedReading,
  comma: boolean,
): { reading: Reading | undefined } | { problem: string } {
  if (typed.volts.trim() === '') return { reading: undefined };
  const volts = readTyped(typed.volts, comma);
  if ('problem' in volts) return { problem: volts.problem };
  if (typeof volts.value !== 'number' || volts.value < 0) {
    return { problem: `volts must be 0 or more, got ${typed.volts}` };
  }
  const day = dayFromIso(typed.day);
  if (day === undefined) return { problem: 'the reading needs a date' };
  return { reading: { day, place: typed.place, volts: volts.value, found: typed.found } };
}
