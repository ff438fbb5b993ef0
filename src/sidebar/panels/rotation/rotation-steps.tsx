import { useMemo, useState } from 'preact/hooks';
import { pointingCells } from '../../../../shared/block/pointing-cells';
import { type Day, dayFromIso } from '../../../../shared/core/calendar/day';
import { startUnits } from '../../../../shared/lists/start-units';
import { decimalComma } from '../../../../shared/locale/decimal-comma';
import type { PlanRules } from '../../../../shared/plan/model';
import { ownGroundLimit } from '../../../../shared/table/own-ground-limit';
import { type OldTable, oldTable } from '../../../../shared/tasks/rotation/old-table';
import { planProblem } from '../../../../shared/tasks/rotation/plan-problem';
import { readRules } from '../../../../shared/tasks/rotation/read-rules';
import { type RulesForm, rulesFormOf, startingRules } from '../../../../shared/tasks/rotation/rules-form';
import { isNewSeason, seasonOf } from '../../../../shared/tasks/rotation/season';
import { tableInput } from '../../../../shared/tasks/rotation/table-input';
import type { UnitSystem } from '../../../../shared/units/units';
import { ListNotes, seasonNotesOf } from '../../lists/list-notes';
import { ListsSection } from '../../lists/lists-section';
import { SampleFarmOffer } from '../../lists/sample-farm-offer';
import { useLists } from '../../lists/use-lists';
import type { Book } from '../../parts/use-book';
import { useReset } from '../../parts/use-reset';
import { KeepFigures, LastSeason } from './last-season';
import { OldTableSection } from './old-table-section';
import { OwnLimitOffer } from './own-limit-offer';
import { PictureStep } from './picture-step';
import { PlanLine, PlanSection, SeasonShown } from './plan-section';
import { refuseChanged } from './refuse-changed';
import { RulesSection } from './rules-section';
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
    typedRules ??
    (settings
      ? rulesFormOf(settings.rules, units, comma)
      : startingRules(lists.paddocks, lists.groups, today));
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
  const onUse = (offered: PlanRules): void =>
    setRules(rulesFormOf({ ...offered, ...seasonDays(read.rules) }, units, comma));
  const isListed = lists.problems.length === 0 && lists.chosen.paddocks && lists.chosen.groups;
  const { made } = planner;
  const input =
    made && !planner.busy && !planner.stale && 'problem' in season
      ? tableInput({ book, lists, made, rules: season.rules, unitSystem: units, old, rebuild })
      : undefined;
  // The answer comes first; where the lists stop it, they do.
  return (
    <>
      {!isListed && restsOn()}
      <section key="plan">
        <h2>The plan</h2>
        {lastSeason && <LastSeason old={lastSeason} />}
        {old && settings && (lastSeason || settings.rules.seasonEnd <= today) && (
          <KeepFigures
            old={old}
            lists={planProblem(lists.paddocks, lists.groups, settings.rules)}
            onDone={onReread}
          />
        )}
        <PlanSection planner={planner} season={season} today={today} onUse={onUse} />
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
        {made && (
          <>
            <h2>Into the sheet</h2>
            {input ? (
              <WriteStep
                tabs={book.overview.tabs.map(({ name }) => name)}
                input={input}
                old={lastSeason ? undefined : old}
                pointing={pointing}
                rebuild={rebuild}
                replaces={lastSeason}
                writer={writer}
              />
            ) : (
              <p>{planner.busy ? 'The plan is still being worked out.' : 'This plan is not up to date.'}</p>
            )}
            <WriteOutcome writer={writer} />
            <SeasonShown
              made={made}
              past={rebuild?.past ?? []}
              units={units}
              isOld={planner.stale && planner.busy}
            />
          </>
        )}
        {input && (
          <MoreFromPlan
            input={input}
            fenceMeters={lists.paddocks.map(({ fenceLengthMeters }) => fenceLengthMeters)}
            today={today}
            known={old}
            isWritten={!old || lastSeason !== undefined || writer.done !== undefined}
          />
        )}
      </section>
      {isListed && restsOn()}
    </>
  );

  function restsOn() {
    return (
      <section key="rests">
        <h2>What this rests on</h2>
        <div class="in-sight">
          <PlanLine planner={planner} />
        </div>
        <h3>Your lists</h3>
        {!lists.chosen.paddocks && !lists.chosen.groups && <SampleFarmOffer onAdded={onReread} />}
        <ListsSection book={book} lists={lists} units={units} onUnits={setUnits} />
        <h3>Your rules</h3>
        <RulesSection form={form} units={units} problems={read.problems} onChange={setRules} />
        {ownLimit && (
          <OwnLimitOffer
            own={ownLimit}
            units={units}
            onUse={(limit) => setRules({ ...form, groundLimit: String(limit) })}
          />
        )}
      </section>
    );
  }
}

/** The season is the grower's, also where only the rest of it was planned. */
function seasonDays(rules: PlanRules | undefined) {
  return rules && { seasonStart: rules.seasonStart, seasonEnd: rules.seasonEnd };
}

interface MoreProps {
  readonly input: ReturnType<typeof tableInput>;
  readonly fenceMeters: readonly (number | undefined)[];
  readonly today: Day;
  /** The table that stands, last season's too. */
  readonly known: OldTable | undefined;
  /** Whether the sheet says what the plan says, or is not asked to. */
  readonly isWritten: boolean;
}

function MoreFromPlan({ input, fenceMeters, today, known, isWritten }: MoreProps) {
  const readNow = () => refuseChanged(known, input.sources);
  return (
    <>
      <h2>More from the plan</h2>
      {!isWritten && (
        <p class="hint">
          This comes from the plan above. Build the table anew first, so that the sheet says the same.
        </p>
      )}
      <PictureStep input={input} readNow={readNow} />
      <TakeAlong input={{ ...input, fenceMeters }} readNow={readNow} today={today} />
    </>
  );
}
