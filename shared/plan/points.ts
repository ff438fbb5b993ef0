/** What the score counts: points for a day short of rest or over the limit, a move and a stride (judgement). */
export const DAY_POINTS = 10;
export const MOVE_POINTS = 1;
export const STRIDE_POINTS = 0.5;
