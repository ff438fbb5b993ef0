import { originalMark } from '../../../shared/tasks/share/original-mark';
import type { SheetPort } from '../port';

/** What the mark of this file would be, see original-mark.ts, and its title. The id itself stays here. */
export function fileMark(port: SheetPort): { mark: string; title: string } {
  return { mark: originalMark(port.fileId()), title: port.title() };
}
