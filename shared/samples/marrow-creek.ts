import { dayWords } from '../core/calendar/day-words';
import { INVENTED_SEASON, type SampleCell, type SampleFarm } from './sample-farm';

/** Days from the day on which the farm is added. */
const WEIGHED = -48;
const OUT_OF_THE_PEN = -44;
const HAY_OPENS = 25;
const LAST_DAY = 110;

/** An invented farm in feet, acres and pounds: one growing group on ten paddocks along a lane. */
export const MARROW_CREEK: SampleFarm = {
  id: 'feet-marrow-creek',
  title: 'Marrow Creek (feet, acres, pounds)',
  // A little less than the gain of the list would give.
  weighings: [{ group: 'Lane feeders', daysAgo: 14, weight: '105' }],
  tabs: (today) => [
    {
      name: 'Paddocks',
      rows: [
        ['Marrow Creek: paddocks'],
        [
          `Ten paddocks along the lane, fenced one at a time. Hay 7 is kept shut and opens on ${dayWords(today + HAY_OPENS)}.`,
        ],
        [],
        [
          'Paddock',
          'Width (ft)',
          'Length (ft)',
          'Area (ac)',
          'Open from',
          'Open until',
          'Last used',
          'Adjoining',
          'Notes',
        ],
        paddock(5, 'Lane 1', 130, 190, 'Lane 2'),
        paddock(6, 'Lane 2', 130, 185, 'Lane 1, Lane 3'),
        paddock(7, 'Lane 3', 130, 180, 'Lane 2, Lane 4'),
        paddock(8, 'Lane 4', 145, 180, 'Lane 3, Lane 5'),
        paddock(9, 'Lane 5', 145, 175, 'Lane 4, Creek 6'),
        paddock(10, 'Creek 6', 160, 170, 'Lane 5, Hay 7'),
        paddock(11, 'Hay 7', 210, 240, 'Creek 6, Wood 8', { day: today + HAY_OPENS }),
        paddock(12, 'Wood 8', 150, 215, 'Hay 7, Wood 9'),
        paddock(13, 'Wood 9', 150, 205, 'Wood 8, Knoll 10'),
        paddock(14, 'Knoll 10', 165, 200, 'Wood 9'),
      ],
    },
    {
      name: 'Pigs',
      rows: [
        ['Marrow Creek: pigs'],
        [
          `Out of the training pen on ${dayWords(today + OUT_OF_THE_PEN)}. Weighed on the crate scale. ${INVENTED_SEASON}`,
        ],
        [],
        ['Group', 'Head', 'Weight (lb)', 'Weighed on', 'Daily gain (lb)', 'In rotation from', 'Until'],
        [
          'Lane feeders',
          14,
          62,
          { day: today + WEIGHED },
          1.45,
          { day: today + OUT_OF_THE_PEN },
          { day: today + LAST_DAY },
        ],
      ],
    },
  ],
};

function paddock(
  row: number,
  name: string,
  widthFeet: number,
  lengthFeet: number,
  adjoining: string,
  openFrom: SampleCell = '',
): readonly SampleCell[] {
  // 43,560 square feet to the acre, exactly.
  return [name, widthFeet, lengthFeet, { f: `=B${row}*C${row}/43560` }, openFrom, '', '', adjoining, ''];
}
