/** Looks of a file's cell that the engine does not show and this preview gives back when it saves. */
import type { EngineStyle } from './engine';

/**
 * The engine keeps properties of a style that it does not know: they move with the cell, are copied with its looks,
 * go when its format is cleared and come back on undo.
 */
export type FileStyle = EngineStyle & {
  /** The file's number format where the engine has only one like it: shownAs. A cell with another one lost it. */
  filePattern?: string;
  shownAs?: string;
  indent?: number;
};
