/** Entry of the bundled script: what the generated top-level functions call. No work happens on loading. */

import type { AnyEntry } from '../../shared/catalogue/define';
import { CATALOGUE } from '../../shared/catalogue/index';
import { type Answer, call } from '../../shared/door/call';
import { LARCH_VALE } from '../../shared/samples/larch-vale';
import { MARROW_CREEK } from '../../shared/samples/marrow-creek';
import type { SampleFarm } from '../../shared/samples/sample-farm';
import { checkSpreadsheet, checkText } from './actions/check-spreadsheet';
import { startSample } from './actions/start-sample';
import * as sidebarDoor from './answer-sidebar';
import { failureSentence, untoldFailure } from './failure-sentence';
import {
  addMenu,
  boundSpreadsheet,
  showSidebarPage,
  showText,
  showTextToCopy,
  spreadsheetEdge,
  tickedPage,
} from './google';
import { type Edit, mayBeTick, recordMove } from './on-edit';
import * as words from './words';

const TITLE = 'Sounder Sheet';
/** Put in by the build. */
declare const VERSION: string;

/** A cell function by name, with what it was called with: what is left out is undefined, what is too much is left. */
export function cell(name: string, args: ArrayLike<unknown>): Answer {
  const entry = CATALOGUE.find((candidate) => candidate.name === name) as AnyEntry;
  return call(
    entry,
    entry.params.map((_, i) => args[i]),
    spreadsheetEdge(),
  );
}

/** Only builds the menu: on opening a file no permission has been given yet. */
export function onOpen(): void {
  addMenu(TITLE, [
    { label: 'Open the sidebar', functionName: 'openSidebar' },
    { label: 'Start with a sample farm (feet)', functionName: 'startSampleInFeet' },
    { label: 'Start with a sample farm (metric)', functionName: 'startSampleMetric' },
    { label: 'Check this spreadsheet', functionName: 'checkThisSpreadsheet' },
    { label: 'Get help', functionName: 'showHelp' },
  ]);
}

/** Runs at every edit in the file; without asking for anything it leaves unless a box of today's page may be meant. */
export function onEdit(event: Edit & { range: Parameters<typeof tickedPage>[0] }): void {
  const page = mayBeTick(event) ? tickedPage(event.range) : undefined;
  if (page) recordMove(page);
}

export function openSidebar(): void {
  showSidebarPage(TITLE);
}

export function startSampleInFeet(): void {
  startFromMenu(MARROW_CREEK);
}

export function startSampleMetric(): void {
  startFromMenu(LARCH_VALE);
}

function startFromMenu(farm: SampleFarm): void {
  try {
    const { tabs } = startSample(boundSpreadsheet(), farm);
    const added = tabs.map((tab) => `"${tab}"`).join(' and ');
    showText(TITLE, words.sampleAdded(added));
  } catch (error) {
    showText(TITLE, untoldFailure(error));
  }
}

/** Tries on a tab of its own what we take for true about Google Sheets. */
export function checkThisSpreadsheet(): void {
  try {
    const port = boundSpreadsheet();
    showTextToCopy(`${TITLE}: check`, checkText(checkSpreadsheet(port), VERSION, port.today()));
  } catch (error) {
    showText(TITLE, failureSentence(error));
  }
}

export function showHelp(): void {
  showText(TITLE, words.HELP);
}

export function answerSidebar(callName: unknown, requestJson: unknown): string {
  return sidebarDoor.answerSidebar(boundSpreadsheet, callName, requestJson);
}
