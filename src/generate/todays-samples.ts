/** Writes dist/samples/*.xlsx for the preview: the sample farms of today, six weeks into their season. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dayFromCivil, isoFromDay } from '../../shared/core/calendar/day';
import { SAMPLE_FARMS } from '../../shared/samples/index';
import type { SampleFarm } from '../../shared/samples/sample-farm';
import { plannedAtOnce } from '../../shared/tasks/rotation/rotation-task';
import { playSample } from '../../shared/tasks/sample-season';
import { openWorkbook, portOf } from '../headless';

const FOLDER = 'dist/samples';
const codeJs = readFileSync('dist/Code.js', 'utf8');
const now = new Date();
const today = isoFromDay(dayFromCivil(now.getFullYear(), now.getMonth() + 1, now.getDate()));

mkdirSync(FOLDER, { recursive: true });
for (const farm of SAMPLE_FARMS) writeFileSync(`${FOLDER}/${farm.id}.xlsx`, await sampleFile(farm));

async function sampleFile(farm: SampleFarm): Promise<Uint8Array> {
  const book = await openWorkbook({ tabs: { Start: [] }, codeJs, today });
  await playSample(portOf(book), farm, plannedAtOnce);
  book.spreadsheet.deleteSheet(book.spreadsheet.getSheetByName('Start')!);
  return book.toXlsx();
}
