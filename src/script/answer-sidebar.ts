/**
 * The sidebar's one door: JSON text in, JSON text out, both checked.
 *
 * Google's page calls carry no Date and no undefined; text does not care. Whatever goes wrong comes back as a
 * sentence in the envelope, never as a raw exception.
 */
import * as v from 'valibot';
import { CALLS, type CallName, type Envelope, type Reply, type Request } from '../../shared/contract';
import { SAMPLE_FARMS } from '../../shared/samples/index';
import { changeCells } from './actions/change-cells';
import { clearInCopy } from './actions/clear-in-copy';
import { fileMark } from './actions/file-mark';
import { overview, readFile } from './actions/overview';
import { readSelection } from './actions/read-selection';
import { readTabs } from './actions/read-tabs';
import { showDrawing } from './actions/show-drawing';
import { startSample } from './actions/start-sample';
import { writeBlock } from './actions/write-block';
import { untoldFailure } from './failure-sentence';
import { type SheetPort, Told } from './port';
import * as words from './words';

type Actions = { readonly [Name in CallName]: (port: SheetPort, request: Request<Name>) => Reply<Name> };

const ACTIONS: Actions = {
  overview: (port) => overview(port),
  readFile: (port) => readFile(port),
  readTabs: (port, { tabs }) => readTabs(port, tabs),
  readSelection: (port) => readSelection(port),
  writeBlock: (port, request) => writeBlock(port, request),
  changeCells: (port, request) => changeCells(port, request),
  fileMark: (port) => fileMark(port),
  clearInCopy: (port, request) => clearInCopy(port, request),
  showDrawing: (port, request) => showDrawing(port, request),
  showCell: (port, { tab, row, column }) => port.showCell(tab, row, column),
  startSample: (port, { sample }) => startSample(port, sampleFarm(sample)),
};

export function answerSidebar(port: () => SheetPort, callName: unknown, requestJson: unknown): string {
  return JSON.stringify(answer(port, callName, requestJson));
}

function answer(port: () => SheetPort, callName: unknown, requestJson: unknown): Envelope {
  try {
    if (!isCallName(callName)) throw new Told(words.NO_MATCH);
    const run = ACTIONS[callName] as (port: SheetPort, request: unknown) => unknown;
    return { ok: true, data: run(port(), parseRequest(callName, requestJson)) };
  } catch (error) {
    return { ok: false, error: untoldFailure(error) };
  }
}

function isCallName(name: unknown): name is CallName {
  return Object.keys(CALLS).includes(String(name));
}

function parseRequest(callName: CallName, requestJson: unknown): unknown {
  const parsed = v.safeParse(CALLS[callName].request, JSON.parse(String(requestJson)));
  if (parsed.success) return parsed.output;
  const path = v.getDotPath(parsed.issues[0]) ?? 'request';
  throw new Told(words.notTaken(callName, path));
}

function sampleFarm(id: string) {
  const farm = SAMPLE_FARMS.find((sample) => sample.id === id);
  if (!farm) throw new Told(words.noSample(id));
  return farm;
}
