import { dayWords } from '../core/calendar/day-words';
import { INVENTED_SEASON, type SampleFarm } from './sample-farm';

/** Days from the day on which the farm is added. */
const RED = { weighed: -64, from: -58, until: 89 };
const BLUE = { weighed: -9, from: -5, until: 138 };
const BARN_END_USED = -79;

/** An invented metric farm: two groups on fourteen paddocks, both lists on one tab, headings in another order. */
export const LARCH_VALE: SampleFarm = {
  id: 'metric-larch-vale',
  title: 'Larch Vale (metres, hectares, kilograms)',
  // A little less than the gain of the list would give.
  weighings: [{ group: 'Red batch', daysAgo: 14, weight: '64' }],
  tabs: (today) => [
    {
      name: 'Farm',
      rows: [
        ['Larch Vale: ground and pigs'],
        [
          `Two litters from the sows; the second joined on ${dayWords(today + BLUE.from)}. Paddocks in hectares. ${INVENTED_SEASON}`,
        ],
        [],
        [
          'Area (ha)',
          'Name',
          'Rest (days)',
          'Last used',
          '',
          'Herd',
          'No. of pigs',
          'Avg weight (kg)',
          'Weighed on',
          'Gain (kg/day)',
          'From',
          'Until',
        ],
        [
          0.21,
          'Upper bank',
          '',
          '',
          '',
          'Red batch',
          11,
          38,
          { day: today + RED.weighed },
          0.6,
          { day: today + RED.from },
          { day: today + RED.until },
        ],
        [
          0.19,
          'Gate field',
          '',
          '',
          '',
          'Blue batch',
          9,
          27,
          { day: today + BLUE.weighed },
          0.58,
          { day: today + BLUE.from },
          { day: today + BLUE.until },
        ],
        [0.22, 'Alder strip', 45, ''],
        [0.18, 'Spring side', 50, ''],
        [0.24, 'Long acre', '', ''],
        [0.2, 'Barn end', '', { day: today + BARN_END_USED }],
        [0.17, 'Orchard', '', ''],
        [0.23, 'Mill piece', '', ''],
        [0.19, 'Stony top', '', ''],
        [0.2, 'Ash corner', '', ''],
        [0.22, 'Beck side', 50, ''],
        [0.18, 'Heron pond', 50, ''],
        [0.21, 'Drove', '', ''],
        [0.2, 'Far ley', '', ''],
        [],
        [{ f: '=SUM(A5:A18)' }, 'Total'],
      ],
    },
  ],
};
