import { useId } from 'preact/hooks';
import { nameKey } from '../../../../shared/lists/read-list-cell';
import type { Plan, PlanProblem } from '../../../../shared/plan/model';
import { type GroupMark, groupMarks } from '../../../../shared/table/group-marks';
import { count, dayWords, MONTHS } from '../../parts/day-words';
import { ScrollRegion } from '../../parts/scroll-region';
import {
  HEAD_HEIGHT,
  type PaddockRow,
  ROW_HEIGHT,
  type SeasonPicture,
  seasonPicture,
} from './season-picture';
import * as words from './words';

interface Props {
  readonly problem: PlanProblem;
  readonly plan: Plan;
}

/** The season as a drawing, paddocks down, days across. The list of moves below says the same in words. */
export function SeasonDrawing({ problem, plan }: Props) {
  const picture = seasonPicture(problem, plan);
  const marks = marksOf(problem);
  return (
    <>
      <ul class="legend">
        {problem.groups.map(({ name }, g) => (
          <li key={name}>
            <span class="swatch group" style={`--group: ${marks[g]?.colour}`} aria-hidden="true">
              {marks[g]?.letter}
            </span>{' '}
            {name}
          </li>
        ))}
        <li>
          <span class="swatch resting" aria-hidden="true" /> resting
        </li>
        <li>
          <span class="swatch closed" aria-hidden="true">
            ×
          </span>{' '}
          closed
        </li>
        {plan.score.restShortDays > 0 && (
          <li>
            <span class="swatch" aria-hidden="true">
              !
            </span>{' '}
            comes in before the rest is over
          </li>
        )}
      </ul>
      <div class="season">
        <ol class="names" style={{ paddingTop: `${HEAD_HEIGHT}px` }}>
          {problem.paddocks.map(({ name }) => (
            <li key={name} title={name} style={{ height: `${ROW_HEIGHT}px` }}>
              {name}
            </li>
          ))}
        </ol>
        <ScrollRegion label="Drawing of the season, scrolls sideways">
          <Drawing problem={problem} picture={picture} />
        </ScrollRegion>
      </div>
    </>
  );
}

type Marks = readonly (GroupMark | undefined)[];

/** In the order of the groups; the same as in the sheet. */
function marksOf({ groups }: PlanProblem): Marks {
  const marks = groupMarks(groups.map(({ name }) => name));
  return groups.map(({ name }) => marks.get(nameKey(name)));
}

function Drawing({ problem, picture }: { problem: PlanProblem; picture: SeasonPicture }) {
  const id = useId();
  const { width, height, rows, months } = picture;
  const marks = marksOf(problem);
  return (
    <svg width={width} height={height} viewBox={`0 0 ${width} ${height}`} role="img" aria-label={words.DRAWN}>
      <defs>
        <pattern id={id} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line x1="0" y1="0" x2="0" y2="5" class="hatch" />
        </pattern>
      </defs>
      {months.map(({ left, month }) => (
        <g key={left}>
          <line x1={left} y1={0} x2={left} y2={height} class="month-line" />
          <text x={left + 4} y={15}>
            {MONTHS[month - 1]}
          </text>
        </g>
      ))}
      {rows.map((row, p) => (
        <g key={problem.paddocks[p]?.name} transform={`translate(0 ${HEAD_HEIGHT + p * ROW_HEIGHT})`}>
          <Row row={row} problem={problem} marks={marks} hatch={`url(#${id})`} width={width} />
        </g>
      ))}
    </svg>
  );
}

const INSET = 3;
const BAR_HEIGHT = ROW_HEIGHT - 2 * INSET;

interface RowProps {
  readonly row: PaddockRow;
  readonly problem: PlanProblem;
  readonly marks: Marks;
  readonly hatch: string;
  readonly width: number;
}

function Row({ row, problem, marks, hatch, width }: RowProps) {
  return (
    <>
      <line x1={0} y1={ROW_HEIGHT} x2={width} y2={ROW_HEIGHT} class="row-line" />
      {row.closed.map((bar) => (
        <g key={`closed-${bar.left}`}>
          <rect x={bar.left} y={INSET} width={bar.width} height={BAR_HEIGHT} class="closed" />
          {bar.width > 14 && (
            <text x={bar.left + bar.width / 2} y={17} text-anchor="middle">
              ×
            </text>
          )}
        </g>
      ))}
      {row.rests.map((bar) => (
        <rect
          key={`rest-${bar.left}`}
          x={bar.left}
          y={INSET + 4}
          width={bar.width}
          height={BAR_HEIGHT - 8}
          fill={hatch}
        />
      ))}
      {row.stays.map(({ left, width: wide, stay, shortDays }) => (
        <g key={left} class="stay" style={`--group: ${marks[stay.group]?.colour}`}>
          <title>
            {`${problem.groups[stay.group]?.name}: ${dayWords(stay.inDay)} to ${dayWords(stay.outDay)}, ${count(stay.outDay - stay.inDay, 'day')}`}
            {shortDays > 0 ? `; rest ${count(shortDays, 'day')} short` : ''}
          </title>
          <rect x={left} y={INSET} width={wide} height={BAR_HEIGHT} />
          <text x={left + wide / 2} y={17} text-anchor="middle">
            {marks[stay.group]?.letter}
            {shortDays > 0 && wide > 14 ? '!' : ''}
          </text>
        </g>
      ))}
    </>
  );
}
