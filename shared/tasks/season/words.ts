/** The sentence of the picture of the season. */
export const EARLIER_STAYS = 'The picture of an earlier season stays.';
