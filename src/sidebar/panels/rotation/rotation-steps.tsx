import { useState } from 'preact/hooks';
import { dayFromIso } from '../../../../shared/core/calendar/day';
import type { UnitSystem } from '../../../../shared/units/units';
import { decimalComma } from '../../numbers/decimal-comma';
import { unitsOfLocale } from '../../numbers/units-of-locale';
import { ListsSection } from './lists-section';
import { PlanSection } from './plan-section';
import { readRules } from './read-rules';
import { type RulesForm, startingRules } from './rules-form';
import { RulesSection } from './rules-section';
import { SampleFarmOffer } from './sample-farm-offer';
import type { Book } from './use-book';
import { useLists } from './use-lists';
import { usePlan } from './use-plan';
import { WriteSection } from './write-section';

interface Props {
  readonly book: Book;
  readonly onReread: () => void;
}

export function RotationSteps({ book, onReread }: Props) {
  const { locale, today: todayIso } = book.overview;
  const [units, setUnits] = useState<UnitSystem>(() => unitsOfLocale(locale));
  const [typedRules, setRules] = useState<RulesForm>();
  const today = dayFromIso(todayIso) ?? 0;
  const lists = useLists(book, units);
  const form = typedRules ?? startingRules(lists.groups, today);
  const read = readRules(form, units, decimalComma(locale));
  const planner = usePlan(lists, read.rules);
  return (
    <>
      <h2>1. Your lists</h2>
      {!lists.chosen.paddocks && !lists.chosen.groups && <SampleFarmOffer onAdded={onReread} />}
      <ListsSection book={book} lists={lists} units={units} onUnits={setUnits} />
      <h2>2. Your rules</h2>
      <RulesSection form={form} units={units} problems={read.problems} onChange={setRules} />
      <h2>3. The plan</h2>
      <PlanSection planner={planner} today={today} />
      {planner.made && (
        <>
          <h2>4. Into the sheet</h2>
          <WriteSection book={book} lists={lists} made={planner.made} units={units} onReread={onReread} />
        </>
      )}
    </>
  );
}
