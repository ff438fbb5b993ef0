/** The preview's page: opens a workbook, puts the engine's grid on the page, connects the script. */
import { prepareEngine } from '../engine/prepare-engine';
import { Host } from '../host';
import { fileLocale } from '../xlsx/file-locale';
import { notCarried, notCarriedSentence } from '../xlsx/not-carried';
import { readXlsx } from '../xlsx/read-xlsx';
import { writeXlsx } from '../xlsx/write-xlsx';
import { acceptSheetsTyping, noteTyping } from './accept-sheets-typing';
import { connectFileLoss, mayBeSaved, tellFileLoss } from './file-loss';
import { clearMenus, showMenu } from './menus';
import { focusGrid, listenForNextPart } from './next-part';
import { openHelpOnAppearing } from './open-help';
import { DOOR_KEY, type PageDoor } from './page-door';
import { element, engine, excelJs, owl } from './page-globals';
import {
  askPerson,
  closeDialog,
  closePageOf,
  closeSidebar,
  showDialog,
  showNotice,
  showSidebar,
  showToast,
} from './script-pages';

type Built = { codeJs: string; sidebarHtml: string; templates: string };

const settings = new URLSearchParams(window.location.search);
const today = settings.get('today');
const clock = today ? () => new Date(`${today}T12:00:00Z`) : () => new Date();

let host: Host;
let app: { destroy(): void } | undefined;

async function textOf(path: string): Promise<string> {
  const answer = await fetch(path);
  if (!answer.ok) throw new Error(`${path}: ${answer.status} ${await answer.text()}`);
  return answer.text();
}

/** The engine's templates without the picture that it would fetch from a search engine for each link. */
function withoutOutsidePictures(templates: string): string {
  return templates.replace(/<img[^>]*"https:[^>]*>/g, '');
}

async function openBuilt(built: Built, title: string, file: ArrayBuffer | undefined): Promise<void> {
  const workbook = new excelJs.Workbook();
  if (file) await workbook.xlsx.load(file);
  const locale = fileLocale(workbook) ?? settings.get('locale') ?? 'en_US';
  clearMenus();
  tellFileLoss('');
  closeSidebar();
  closeDialog();
  host = new Host({
    engine,
    codeJs: built.codeJs,
    htmlFiles: { sidebar: built.sidebarHtml },
    ...(file ? { snapshot: readXlsx(engine, workbook, locale) } : {}),
    locale,
    timeZone: settings.get('tz') ?? Intl.DateTimeFormat().resolvedOptions().timeZone,
    title,
    now: clock,
    ui: {
      addMenu: (menu) => showMenu(menu, runMenuItem),
      showSidebar,
      showDialog,
      alert: askPerson,
      toast: showToast,
    },
  });
  const { book } = host.state;
  const thisYear = () => clock().getUTCFullYear();
  acceptSheetsTyping(book, thisYear, ({ sheetId, row, col }, typed, oldValue) => {
    const area = { sheetId, row, column: col, rows: 1, columns: 1 };
    // The editor has to be done with the cell before the script changes anything.
    queueMicrotask(() => host.edited(area, typed, oldValue));
  });
  element('title').textContent = title;
  await mountGrid(built.templates);
  if (file) tellFileLoss(await lossOf(file));
  if (host.publicFunctions().includes('onOpen')) runMenuItem('onOpen');
}

async function lossOf(file: ArrayBuffer): Promise<string> {
  try {
    return notCarriedSentence(await notCarried(new Uint8Array(file), await savedFile()));
  } catch {
    return 'It could not be found out whether all of this file is carried over. Keep the file that you opened.';
  }
}

async function mountGrid(templates: string): Promise<void> {
  app?.destroy();
  element('grid').replaceChildren();
  const grid = new owl.App(engine.Spreadsheet as never, {
    props: {
      model: host.state.book.model,
      notifyUser: ({ text }: { text: string }) => showToast(text, ''),
      raiseError: (text: string) => showNotice('', text),
      askConfirmation: (text: string, confirm: () => void) => {
        if (window.confirm(text)) confirm();
      },
    } as never,
    env: {},
    templates,
  });
  app = grid;
  drawBeforeNextKey(grid);
  await grid.mount(element('grid'));
}

/**
 * The engine's editor reads the next key from what is drawn, and the view library draws at the next frame: a key that
 * comes earlier was put beside what the cell held before. So everything is drawn as soon as the key's event is over.
 */
function drawBeforeNextKey({ scheduler }: Pick<InstanceType<typeof owl.App>, 'scheduler'>): void {
  scheduler.requestAnimationFrame = ((draw: FrameRequestCallback) => {
    queueMicrotask(() => draw(performance.now()));
    return 1;
  }) as typeof window.requestAnimationFrame;
}

/** A failing menu function shows its message, as Sheets shows it over the grid. */
function runMenuItem(functionName: string): void {
  try {
    host.call(functionName);
  } catch (error) {
    showNotice('The script failed', error instanceof Error ? error.message : String(error));
  }
}

const door: PageDoor = {
  functionNames: () => host.publicFunctions(),
  call: (functionName, valuesJson) =>
    JSON.stringify(host.callFromPage(functionName, JSON.parse(valuesJson) as unknown[])),
  close: closePageOf,
  focusGrid,
};

async function savedFile(): Promise<Uint8Array<ArrayBuffer>> {
  const workbook = new excelJs.Workbook();
  writeXlsx(host.state.book, workbook);
  return new Uint8Array(await workbook.xlsx.writeBuffer());
}

async function saveFile(): Promise<void> {
  if (!(await mayBeSaved())) return;
  const type = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
  const address = URL.createObjectURL(new Blob([await savedFile()], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = `${host.state.title}.xlsx`;
  link.click();
  URL.revokeObjectURL(address);
}

function connectButtons(built: Built): void {
  connectFileLoss();
  const chooser = element<HTMLInputElement>('file');
  listenForNextPart(window);
  element('open').addEventListener('click', () => chooser.click());
  chooser.addEventListener('change', async () => {
    const file = chooser.files?.[0];
    chooser.value = '';
    if (!file) return;
    try {
      await openBuilt(built, file.name.replace(/\.xlsx$/i, ''), await file.arrayBuffer());
    } catch {
      showNotice('This file did not open', `"${file.name}" could not be read as an .xlsx workbook.`);
    }
  });
  element('save').addEventListener('click', () => void saveFile());
  element('sidebar-close').addEventListener('click', closeSidebar);
  element('script-dialog-close').addEventListener('click', closeDialog);
}

async function start(): Promise<void> {
  prepareEngine(engine);
  noteTyping(engine);
  const [codeJs, sidebarHtml, templates, sampleName] = await Promise.all([
    textOf('/built/Code.js'),
    textOf('/built/sidebar.html'),
    textOf('/vendor/o_spreadsheet.xml'),
    textOf(`/sample-name?${new URLSearchParams({ sample: settings.get('sample') ?? '' })}`),
  ]);
  const built = { codeJs, sidebarHtml, templates: withoutOutsidePictures(templates) };
  const file = sampleName
    ? await (await fetch(`/samples/${encodeURIComponent(sampleName)}.xlsx`)).arrayBuffer()
    : undefined;
  (window as unknown as Record<string, unknown>)[DOOR_KEY] = door;
  connectButtons(built);
  openHelpOnAppearing(element('grid'));
  await openBuilt(built, sampleName || 'Untitled spreadsheet', file);
  // Tests look at the workbook through this.
  Object.defineProperty(window, 'sounderPreview', { get: () => host });
}

start().catch((error: unknown) => {
  showNotice('The preview did not start', error instanceof Error ? error.message : String(error));
});
