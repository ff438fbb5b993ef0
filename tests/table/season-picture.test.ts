import { expect, it } from 'vitest';
import { seasonPicture } from '../../src/sidebar/panels/rotation/season-picture';

it.each([0, 1, 200])('draws no negative width where the plan begins %i days after the season end', (late) => {
  const problem = {
    paddocks: [
      { name: 'North', areaSquareMeters: 2000, openFrom: 20_150, openUntil: 20_050, lastUsed: 20_010 },
    ],
    groups: [{ name: 'Reds', head: 10, weightKg: 30, weighedOn: 20_000, dailyGainKg: 0.7, from: 20_000 }],
    rules: {
      rest: { kind: 'fixed' as const, days: 20 },
      shortestStayDays: 3,
      longestStayDays: 6,
      moveWeekdays: [true, true, true, true, true, true, true],
      noMoveDays: [],
      seasonStart: 20_100 + late,
      seasonEnd: 20_100,
    },
  };
  const stays = [{ group: 0, paddock: 0, inDay: 20_100 + late, outDay: 20_104 + late }];
  const picture = seasonPicture(problem, { stays } as unknown as Parameters<typeof seasonPicture>[1]);
  const bars = picture.rows.flatMap((row) => [...row.stays, ...row.rests, ...row.closed]);
  for (const { width } of [picture, ...bars]) expect(width).toBeGreaterThanOrEqual(0);
});
