/** One workbook with the script bound to it: the engine, the service stand-ins and the script's functions together. */
import { Book } from './engine/book';
import { registerCellFunctions } from './engine/cell-functions';
import type { Engine } from './engine/engine';
import type { HostHooks } from './engine/host-hooks';
import { localeOf } from './engine/locale';
import { argumentsForScript, resultForPage } from './script/page-boundary';
import { Script, type ScriptFunctions } from './script/run-script';
import type { Area } from './service/area';
import { CallGate } from './service/call-gate';
import type { HostState, UiPort } from './service/host-state';
import { HtmlService } from './service/html-service';
import { LockService } from './service/lock-service';
import { LoadingCells, type Modes, USUAL_MODES } from './service/modes';
import { rangeOf } from './service/range';
import { SpreadsheetApp } from './service/spreadsheet-app';
import { Session, Utilities } from './service/utilities';

export type HostOptions = {
  engine: Engine;
  ui: UiPort;
  /** Text of the built script; '' for a workbook without one. */
  codeJs?: string;
  /** Built pages by name without ".html". */
  htmlFiles?: Readonly<Record<string, string>>;
  /** An engine snapshot; without one the workbook has these tabs, all empty. */
  snapshot?: unknown;
  tabs?: readonly { name: string; rows: number; columns: number }[];
  title?: string;
  locale?: string;
  timeZone?: string;
  scriptTimeZone?: string;
  now?: () => Date;
  /** Nasty habits of the real service, see modes.ts. */
  modes?: Partial<Modes>;
};

export class Host {
  readonly state: HostState;
  readonly script: Script;
  /** Cell-function calls so far by name. */
  readonly cellCalls = new Map<string, number>();
  private cellScope: ScriptFunctions | undefined;

  constructor(private readonly options: HostOptions) {
    const { engine, codeJs = '', title = 'Untitled spreadsheet', now = () => new Date() } = options;
    const modes = { ...USUAL_MODES, ...options.modes };
    const gate = new CallGate(modes);
    const hasCellFunction = (name: string): boolean =>
      this.script.text.cellFunctions.some((one) => one.name.toUpperCase() === name);
    const hooks: HostHooks = {
      timeZone: () => this.state.timeZone,
      scriptTimeZone: () => this.state.scriptTimeZone,
      now,
      hasCellFunction,
      modes,
      hasChangingCells: false,
      callCellFunction: (name, values) => this.callCellFunction(name, values),
    };
    // The engine calculates while the workbook is being made, so the hooks must find all but the book ready.
    this.state = {
      gate,
      ui: options.ui,
      // By the file's name: the same file opened another day is the same file, a copy under another name is a copy.
      id: `preview-${title}`,
      title,
      timeZone: options.timeZone ?? 'Etc/UTC',
      scriptTimeZone: options.scriptTimeZone ?? 'Etc/UTC',
      now,
      htmlFiles: options.htmlFiles ?? {},
      notes: new Map(),
      protections: [],
      modes,
      hasCellFunction,
      chartTabs: new Set(),
      typedColumns: [],
      lockHeldElsewhere: false,
      lockHeld: false,
    } as unknown as HostState;
    const state = this.state;
    state.loading = new LoadingCells(state);
    const services = {
      SpreadsheetApp: new SpreadsheetApp(state),
      HtmlService: new HtmlService(state),
      LockService: new LockService(state),
      Utilities: new Utilities(state),
      Session: new Session(state),
    };
    this.script = new Script(codeJs, services, () => this.state.now());
    registerCellFunctions(engine, this.script.text.cellFunctions);
    state.book = new Book(engine, options.snapshot ?? this.emptySnapshot(), hooks);
  }

  private emptySnapshot(): unknown {
    const { engine, tabs = [{ name: 'Sheet1', rows: 1000, columns: 26 }], locale = 'en_US' } = this.options;
    const workbook = engine.helpers.createEmptyWorkbookData();
    const sheets = tabs.map(({ name, rows, columns }, index) => ({
      ...engine.helpers.createEmptySheet(`tab${index + 1}`, name),
      rowNumber: rows,
      colNumber: columns,
    }));
    return { ...workbook, sheets, settings: { ...workbook.settings, locale: localeOf(locale) } };
  }

  private callCellFunction(name: string, values: unknown[]): unknown {
    this.cellCalls.set(name, (this.cellCalls.get(name) ?? 0) + 1);
    return this.state.gate.insideCellFunction(() => {
      this.cellScope ??= this.script.load();
      const run = this.cellScope[name] as (...arguments_: unknown[]) => unknown;
      return run(...values);
    });
  }

  /** Runs a function of the script in a fresh scope, as a menu item or the page does. One undo step. */
  call(functionName: string, ...values: unknown[]): unknown {
    if (!this.publicFunctions().includes(functionName)) {
      throw new Error(`Script function not found: ${functionName}`);
    }
    const run = this.script.load()[functionName] as (...arguments_: unknown[]) => unknown;
    try {
      return this.state.book.asOneStep(() => {
        const result = run(...values);
        // What is still queued is written when the script ends.
        this.state.gate.flush();
        return result;
      });
    } finally {
      this.state.lockHeld = false;
      this.state.gate.forgetQueue();
      this.state.loading.settle();
    }
  }

  /** What follows when a person has typed into a cell: the script's onEdit, whose failure nobody sees. */
  edited(area: Area, value: string, oldValue: unknown): void {
    if (!this.publicFunctions().includes('onEdit')) return;
    try {
      // The place of the edit stands in the range itself too: no call is needed for it.
      const [rowStart, columnStart] = [area.row + 1, area.column + 1];
      const place = {
        rowStart,
        columnStart,
        rowEnd: area.row + area.rows,
        columnEnd: area.column + area.columns,
      };
      const range = Object.assign(rangeOf(this.state, area), place);
      this.call('onEdit', { range, value, oldValue });
    } catch {
      // Google notes it in the log of executions only.
    }
  }

  /** What google.script.run does: the same call, through the boundary that lets only plain data pass. */
  callFromPage(functionName: string, values: readonly unknown[]): unknown {
    return resultForPage(this.call(functionName, ...argumentsForScript(values)));
  }

  /** Functions that menus and pages can call: names ending in "_" are private. */
  publicFunctions(): string[] {
    return this.script.text.functionNames.filter((name) => !name.endsWith('_'));
  }
}
