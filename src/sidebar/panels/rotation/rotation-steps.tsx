import type { ComponentProps } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { pointingCells } from '../../../../shared/block/pointing-cells';
import { type Day, dayFromIso } from '../../../../shared/core/calendar/day';
import { startUnits } from '../../../../shared/lists/start-units';
import { decimalComma } from '../../../../shared/locale/decimal-comma';
import { ownGroundLimit } from '../../../../shared/table/own-ground-limit';
import type { UnitSystem } from '../../../../shared/units/units';
import { ListNotes, seasonNotesOf } from '../../lists/list-notes';
import { ListsSection } from '../../lists/lists-section';
import { SampleFarmOffer } from '../../lists/sample-farm-offer';
import { useLists } from '../../lists/use-lists';
import type { Book } from '../../parts/use-book';
import { useReset } from '../../parts/use-reset';
import { KeepFigures, LastSeason } from './last-season';
import { type OldTable, oldTable } from './old-table';
import { OldTableSection } from './old-table-section';
import { OwnLimitOffer } from './own-limit-offer';
import { PictureStep } from './picture-step';
import { planProblem } from './plan-problem';
import { PlanSection } from './plan-section';
import { readRules } from './read-rules';
import { refuseChanged } from './refuse-changed';
import { type RulesForm, rulesFormOf, startingRules } from './rules-form';
import { RulesSection } from './rules-section';
import { isNewSeason, seasonOf } from './season';
import { tableInput } from './table-input';
import { TakeAlong } from './take-along';
import { usePlan } from './use-plan';
import { useWrite } from './use-write';
import { WriteOutcome } from './write-outcome';
import { WriteStep } from './write-step';

interface Props {
  readonly book: Book;
  readonly onReread: () => void;
}

export function RotationSteps({ book, onReread }: Props) {
  const { locale, today: todayIso } = book.overview;
  const today = dayFromIso(todayIso) ?? 0;
  const comma = decimalComma(locale);
  const old = useMemo(() => oldTable(book), [book]);
  const pointing = useMemo(
    () => (old ? pointingCells(book.tabs, old.info, book.overview.blocks) : []),
    [book, old],
  );
  const settings = old?.rotation.settings;
  const [chosenUnits, setUnits] = useState<UnitSystem>();
  const [typedRules, setRules] = useState<RulesForm>();
  useReset(settings?.rules, () => setRules(undefined));
  const [countPlannedAsDone, setCount] = useState(false);
  const ownUnits = useMemo(() => startUnits(book), [book]);
  const units = chosenUnits ?? settings?.unitSystem ?? ownUnits;
  const lists = useLists(book, units, settings?.lists);
  const form =
    typedRules ?? (settings ? rulesFormOf(settings.rules, units, comma) : startingRules(lists.groups, today));
  const read = readRules(form, units, comma);
  const season = seasonOf({ lists, rules: read.rules, old, today, countPlannedAsDone });
  const noted = read.rules && {
    start: read.rules.seasonStart,
    end: read.rules.seasonEnd,
    today,
    system: units,
    isUnderWay: old?.rotation.rows.some(({ movedIn }) => movedIn !== undefined) ?? false,
  };
  const lastSeason = old && isNewSeason(old, read.rules) ? old : undefined;
  const planner = usePlan('problem' in season ? season.problem : undefined);
  const rebuild = 'rebuild' in season ? season.rebuild : undefined;
  const ownLimit = rebuild && ownGroundLimit(rebuild.past);
  const writer = useWrite(onReread);
  return (
    <>
      <h2>1. Your lists</h2>
      {!lists.chosen.paddocks && !lists.chosen.groups && <SampleFarmOffer onAdded={onReread} />}
      <ListsSection book={book} lists={lists} units={units} onUnits={setUnits} />
      <h2>2. Your rules</h2>
      <RulesSection form={form} units={units} problems={read.problems} onChange={setRules} />
      {ownLimit && (
        <OwnLimitOffer
          own={ownLimit}
          units={units}
          onUse={(limit) => setRules({ ...form, groundLimit: String(limit) })}
        />
      )}
      <h2>3. The plan</h2>
      {lastSeason && <LastSeason old={lastSeason} />}
      {old && settings && (lastSeason || settings.rules.seasonEnd <= today) && (
        <KeepFigures
          old={old}
          lists={planProblem(lists.paddocks, lists.groups, settings.rules)}
          onDone={onReread}
        />
      )}
      {old && !lastSeason && (
        <OldTableSection
          old={old}
          season={season}
          today={today}
          counted={countPlannedAsDone}
          onCount={setCount}
        />
      )}
      <ListNotes notes={seasonNotesOf(lists, noted)} />
      <PlanSection planner={planner} season={season} today={today} />
      {planner.made && (
        <>
          <h2>4. Into the sheet</h2>
          {planner.stale || 'missing' in season ? (
            <>
              <p>Work the plan out again before you write it.</p>
              <WriteOutcome writer={writer} />
            </>
          ) : (
            planner.made.words && (
              <IntoTheSheet
                tabs={book.overview.tabs.map(({ name }) => name)}
                input={tableInput({
                  book,
                  lists,
                  made: planner.made,
                  rules: season.rules,
                  unitSystem: units,
                  old,
                  rebuild: season.rebuild,
                })}
                fenceMeters={lists.paddocks.map(({ fenceLengthMeters }) => fenceLengthMeters)}
                today={today}
                known={old}
                old={lastSeason ? undefined : old}
                pointing={pointing}
                rebuild={season.rebuild}
                replaces={lastSeason}
                writer={writer}
              />
            )
          )}
        </>
      )}
    </>
  );
}

interface IntoProps extends ComponentProps<typeof WriteStep> {
  readonly fenceMeters: readonly (number | undefined)[];
  readonly today: Day;
  /** The table that stands, last season's too. */
  readonly known: OldTable | undefined;
}

function IntoTheSheet({ fenceMeters, today, known, ...write }: IntoProps) {
  const { input } = write;
  const readNow = () => refuseChanged(known, input.sources);
  return (
    <>
      <WriteStep {...write} />
      <WriteOutcome writer={write.writer} />
      <h2>5. More from the plan</h2>
      {write.old && !write.writer.done && (
        <p class="hint">
          This comes from the plan above. Build the table anew first, so that the sheet says the same.
        </p>
      )}
      <PictureStep input={input} readNow={readNow} />
      <TakeAlong input={{ ...input, fenceMeters }} readNow={readNow} today={today} />
    </>
  );
}
