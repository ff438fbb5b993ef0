import { useState } from 'preact/hooks';
import { dayFromIso } from '../../../../shared/core/calendar/day';
import { decimalComma } from '../../../../shared/locale/decimal-comma';
import { groupsLeftOut } from '../../../../shared/plan/groups-left-out';
import { growthNotes } from '../../../../shared/plan/growth-notes';
import type { PlanRules } from '../../../../shared/plan/model';
import { ownGroundLimit } from '../../../../shared/table/own-ground-limit';
import { UNITS_LEGEND, UNITS_OPTIONS } from '../../../../shared/tasks/ask';
import {
  COUNT_OPTIONS,
  PLAN_LABEL,
  ROTATION_TASK,
  type RotationInput,
  RULES_LABEL,
} from '../../../../shared/tasks/rotation/rotation-task';
import { rulesFormOf } from '../../../../shared/tasks/rotation/rules-form';
import { answerRenamed, COUNT_LABEL } from '../../../../shared/tasks/rotation/words';
import { readUnchanged } from '../../../../shared/tasks/run-task';
import { ListNotes, seasonNotesOf } from '../../lists/list-notes';
import { ListsSection } from '../../lists/lists-section';
import { OutOfUseAsked } from '../../lists/out-of-use';
import { SampleFarmOffer } from '../../lists/sample-farm-offer';
import { UndatedWeightsAsked } from '../../lists/undated-weights';
import { UnplacedAsked } from '../../lists/unplaced-groups';
import { answeredLists } from '../../lists/use-lists';
import { ChoiceField } from '../../parts/task-fields';
import type { Book } from '../../parts/use-book';
import { useReset } from '../../parts/use-reset';
import { useTask } from '../../parts/use-task';
import { WriteBlock } from '../../parts/write-block';
import { ask } from '../../server';
import { KeepFigures } from './last-season';
import { OldTableSection } from './old-table-section';
import { OwnLimitOffer } from './own-limit-offer';
import { PictureStep } from './picture-step';
import { PlanLine, PlanSection, SeasonShown } from './plan-section';
import { RulesSection } from './rules-section';
import { TakeAlong } from './take-along';
import { usePlan } from './use-plan';
import * as words from './words';

interface Props {
  readonly book: Book;
  readonly onReread: () => void;
}

export function RotationSteps({ book, onReread }: Props) {
  const { locale, today: todayIso } = book.overview;
  const today = dayFromIso(todayIso) ?? 0;
  const comma = decimalComma(locale);
  const state = useTask(ROTATION_TASK, book);
  const { form, answers, answer } = state;
  const { old, isNewSeason, units, rulesForm, ruleProblems, season, plan, renaming } = form;
  const isAsked = renaming?.value === 'open';
  const lists = answeredLists(form.lists, state);
  const settings = old?.rotation.settings;
  useReset(settings?.rules, () => answer(RULES_LABEL, undefined));
  const [hasWritten, setWritten] = useState(false);
  const isPlannable = 'problem' in season;
  const planner = usePlan(isPlannable ? season.problem : undefined, (planned) => answer(PLAN_LABEL, planned));
  const rules = isPlannable ? season.rules : undefined;
  const rebuild = isPlannable ? season.rebuild : undefined;
  const noted = rules && {
    start: rules.seasonStart,
    end: rules.seasonEnd,
    today,
    system: units,
    isUnderWay: old?.rotation.rows.some(({ movedIn }) => movedIn !== undefined) ?? false,
  };
  const ownLimit = rebuild && ownGroundLimit(rebuild.past);
  const setRules = (changed: typeof rulesForm): void => answer(RULES_LABEL, changed);
  const onUse = (offered: PlanRules): void =>
    setRules(rulesFormOf({ ...offered, ...seasonDays(rules) }, units, comma));
  const isListed = lists.problems.length === 0 && lists.chosen.paddocks && lists.chosen.groups;
  const { made } = planner;
  const readNow = async (): Promise<RotationInput> => {
    const now = await readUnchanged(ask, ROTATION_TASK, form, answers);
    if (!now.plan) throw new Error(now.questions.join(' '));
    return now.plan;
  };
  const ofPlan = made ? [...groupsLeftOut(made.problem), ...growthNotes(made.problem, made.plan)] : [];
  const notes = <ListNotes notes={[...ofPlan, ...seasonNotesOf(lists, noted)]} />;
  // The answer comes first; where the lists stop it, they do.
  return (
    <>
      {!isListed && restsOn()}
      <section key="plan">
        <h2>The plan</h2>
        {old && settings && (isNewSeason || settings.rules.seasonEnd <= today) && (
          <KeepFigures old={old} book={book} />
        )}
        <UnplacedAsked lists={lists} today={todayIso} />
        <PlanSection planner={planner} season={season} today={today} onUse={onUse} />
        {renaming && <ChoiceField choice={renaming} state={state} />}
        {old && !isNewSeason && (
          <OldTableSection
            old={old}
            season={season}
            today={today}
            counted={form.countsPlanned}
            onCount={(counted) => answer(COUNT_LABEL, COUNT_OPTIONS[counted ? 'yes' : 'no'])}
          />
        )}
        {!made && notes}
        <OutOfUseAsked lists={lists} today={todayIso} />
        {lists.undated && <UndatedWeightsAsked undated={lists.undated} today={todayIso} />}
        {made && (
          <>
            <h2>Into the sheet</h2>
            <WriteBlock
              task={ROTATION_TASK}
              state={state}
              book={book}
              onDone={() => setWritten(true)}
              missing={
                isAsked
                  ? answerRenamed(renaming.legend)
                  : planner.busy
                    ? words.STILL_PLANNING
                    : words.NOT_UP_TO_DATE
              }
            />
            {notes}
            <SeasonShown
              made={made}
              past={rebuild?.past ?? []}
              units={units}
              isOld={planner.stale && planner.busy}
            />
          </>
        )}
        {plan && (
          <>
            <h2>More from the plan</h2>
            {old && !isNewSeason && !hasWritten && <p class="hint">{words.FROM_THE_PLAN}</p>}
            <PictureStep book={book} input={plan} sources={form.sources} />
            <TakeAlong
              input={{
                ...plan,
                fenceMeters: lists.paddocks.map(({ fenceLengthMeters }) => fenceLengthMeters),
              }}
              readNow={readNow}
              today={today}
            />
          </>
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
        <ListsSection
          book={book}
          lists={lists}
          units={units}
          onUnits={(chosen) => answer(UNITS_LEGEND, UNITS_OPTIONS[chosen])}
        />
        <h3>Your rules</h3>
        <RulesSection form={rulesForm} units={units} problems={ruleProblems} onChange={setRules} />
        {ownLimit && (
          <OwnLimitOffer
            own={ownLimit}
            units={units}
            onUse={(limit) => setRules({ ...rulesForm, groundLimit: String(limit) })}
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
