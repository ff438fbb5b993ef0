import type { CellChange } from '../../contract';

/** What can have happened. */
export type What = 'moved' | 'skipped' | 'not yet' | 'herd' | 'cover' | 'shut' | 'as planned';

/** Something that has happened, in the texts that were typed or chosen. */
export interface Happened {
  readonly what: What;
  readonly group?: string;
  /** Id of the move that is meant; '' for one that nobody planned. */
  readonly move?: string;
  /** Of a move, '' for the one that was planned. */
  readonly paddock?: string;
  /** Days in ISO. */
  readonly day?: string;
  readonly until?: string;
  readonly head?: string;
  readonly weight?: string;
  readonly note?: string;
  readonly cover?: string;
  /** All of the group have gone, and so have its moves to come. */
  readonly allGone?: boolean;
}

/** Why something cannot be recorded, with the field that it is about. */
export class NotRecorded extends Error {
  constructor(
    message: string,
    readonly field?: keyof Happened,
  ) {
    super(message);
  }
}

/** A cell that will be typed into, with what it is called: "Moved in of Reds, Oak 2026-05-08". */
export interface Typing {
  readonly what: string;
  readonly cell: CellChange;
}
