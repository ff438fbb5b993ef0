import { isEarlierPicture, type PictureInput, pictureBlock } from '../../table/picture-block';
import { asking } from '../ask';
import type { Sources, Task } from '../task';
import * as words from './words';

type Season = Omit<PictureInput, 'corner'>;

export const PICTURE_BLOCK = 'SOUNDER_SEASON';

/**
 * The season that was planned as a picture in cells. That of an earlier season stays as a record. `sources`: what the
 * plan rests on.
 */
export function pictureTask(season: Season, sources: Sources = {}): Task<Season> {
  return {
    name: PICTURE_BLOCK,
    what: 'the season as a picture in cells',
    tabName: 'Season',
    read: (book, answers) => {
      const ask = asking(book, answers, PICTURE_BLOCK);
      const start = season.settings.rules.seasonStart;
      const isEarlier = ask.standing && isEarlierPicture(ask.standing.block.values, start);
      return ask.form(() => season, {}, { sources, record: isEarlier ? words.EARLIER_STAYS : undefined });
    },
    compose: (plan, corner) => pictureBlock({ ...plan, corner }),
  };
}
