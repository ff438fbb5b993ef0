/** Where everything stands in the drawing of the season: days become lengths, paddocks become rows. */
import { civilFromDay, type Day } from '../../../../shared/core/calendar/day';
import type { Plan, PlanPaddock, PlanProblem, Stay } from '../../../../shared/plan/model';
import { restDue } from '../../../../shared/plan/rest-due';

export const DAY_WIDTH = 6;
export const ROW_HEIGHT = 26;
export const HEAD_HEIGHT = 22;

export interface Bar {
  readonly left: number;
  readonly width: number;
}

export interface StayBar extends Bar {
  readonly stay: Stay;
  /** Days by which the rest before this stay falls short; 0 where it is long enough. */
  readonly shortDays: number;
}

export interface PaddockRow {
  readonly stays: readonly StayBar[];
  readonly rests: readonly Bar[];
  readonly closed: readonly Bar[];
}

export interface SeasonPicture {
  readonly width: number;
  readonly height: number;
  readonly rows: readonly PaddockRow[];
  /** First days of months inside the season. */
  readonly months: readonly { readonly left: number; readonly month: number }[];
}

export function seasonPicture(problem: PlanProblem, plan: Plan): SeasonPicture {
  const { seasonStart: start, seasonEnd: end } = problem.rules;
  const bar = (from: Day, to: Day): Bar => {
    const left = Math.max(from, start);
    return { left: (left - start) * DAY_WIDTH, width: Math.max(0, Math.min(to, end) - left) * DAY_WIDTH };
  };
  const shutBar = ({ shutFrom, shutUntil }: PlanPaddock): Bar[] =>
    shutFrom === undefined && shutUntil === undefined ? [] : [bar(shutFrom ?? start, (shutUntil ?? end) + 1)];
  const rows = problem.paddocks.map((paddock, p): PaddockRow => {
    const stays = plan.stays.filter((stay) => stay.paddock === p);
    const readyAfter = (left: Day): Day => left + restDue(paddock, problem.rules.rest, left);
    const uses = [paddock.lastUsed, ...stays.map(({ outDay }) => outDay)];
    const openUntil = paddock.openUntil ?? end;
    return {
      stays: stays.map((stay, i) => {
        const left = uses[i];
        const short = left === undefined ? 0 : readyAfter(left) - stay.inDay;
        return { ...bar(stay.inDay, stay.outDay), stay, shortDays: Math.max(0, short) };
      }),
      rests: uses.flatMap((left, i) =>
        left === undefined ? [] : bar(left, Math.min(readyAfter(left), stays[i]?.inDay ?? end)),
      ),
      closed: [bar(start, paddock.openFrom ?? start), bar(openUntil + 1, end), ...shutBar(paddock)].filter(
        ({ width }) => width > 0,
      ),
    };
  });
  return {
    // A plan that begins after the season end (today or a typed day is later) has no days to draw.
    width: Math.max(0, end - start) * DAY_WIDTH,
    height: HEAD_HEIGHT + rows.length * ROW_HEIGHT,
    rows,
    months: monthStarts(start, end),
  };
}

function monthStarts(start: Day, end: Day): SeasonPicture['months'] {
  const months: { left: number; month: number }[] = [];
  for (let day = start; day < end; day++) {
    const { month, dayOfMonth } = civilFromDay(day);
    if (day === start || dayOfMonth === 1) months.push({ left: (day - start) * DAY_WIDTH, month });
  }
  // A first month of a few days would write over the next one's name.
  const [first, second] = months;
  return first && second && second.left - first.left < 5 * DAY_WIDTH ? months.slice(1) : months;
}
