/** What the score counts: points for a day short of rest or over the limit, a move and a stride (judgement). */
export const DAY_POINTS = 10;
export const MOVE_POINTS = 1;
export const STRIDE_POINTS = 0.5;
/** A move that is not one of the plan before: within so many days from the start of the plan, and later (judgement). */
export const SOON_DAYS = 28;
export const SOON_CHANGE_POINTS = 0.2;
export const LATE_CHANGE_POINTS = 0.05;
