/** Short ways to write the cells of a block. */
import type { BlockCell } from '../contract';
import { type Day, isoFromDay } from '../core/calendar/day';

export const BLANK: BlockCell = { k: 'blank' };

/** An empty cell that knows how to show what is typed or spilled into it later. */
export function blank(format: string): BlockCell {
  return { k: 'blank', format };
}

/** Room into which a cell function of ours spills its answer: never read as typed. */
export function answer(format?: string): BlockCell {
  return format === undefined ? { k: 'blank', answer: true } : { k: 'blank', answer: true, format };
}

/** Text that stays text, whatever it begins with. */
export function text(value: string): BlockCell {
  return value === '' ? BLANK : { k: 't', v: value };
}

export function number(value: number, format?: string): BlockCell {
  return format === undefined ? { k: 'n', v: value } : { k: 'n', v: value, format };
}

export function date(day: Day): BlockCell {
  return { k: 'd', v: isoFromDay(day) };
}

/** A formula: English names, `;` between arguments, no decimal or array literals, so that every locale reads it. */
export function formula(body: string, format?: string): BlockCell {
  return format === undefined ? { k: 'f', v: body } : { k: 'f', v: body, format };
}
