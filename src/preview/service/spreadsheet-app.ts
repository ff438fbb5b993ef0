/** SpreadsheetApp itself. */
import { type CallGate, GATE, guardService } from './call-gate';
import { ConditionalFormatRuleBuilder } from './conditional-format';
import { DataValidationBuilder } from './data-validation';
import type { HostState } from './host-state';
import type { Range } from './range';
import type { Sheet } from './sheet';
import { Spreadsheet } from './spreadsheet';
import { Ui } from './ui';

export class SpreadsheetApp {
  readonly [GATE]: CallGate;
  readonly WrapStrategy = { WRAP: 'WRAP', OVERFLOW: 'OVERFLOW', CLIP: 'CLIP' } as const;
  readonly ProtectionType = { RANGE: 'RANGE', SHEET: 'SHEET' } as const;
  readonly SheetType = { GRID: 'GRID', OBJECT: 'OBJECT' } as const;
  readonly DataValidationCriteria = { CHECKBOX: 'CHECKBOX' } as const;
  readonly #state: HostState;

  constructor(state: HostState) {
    this[GATE] = state.gate;
    this.#state = state;
  }
  getActiveSpreadsheet(): Spreadsheet {
    return new Spreadsheet(this.#state);
  }
  getActiveSheet(): Sheet {
    return new Spreadsheet(this.#state).getActiveSheet();
  }
  getActiveRange(): Range | null {
    return new Spreadsheet(this.#state).getActiveRange();
  }
  getCurrentCell(): Range {
    return new Spreadsheet(this.#state).getCurrentCell();
  }
  getUi(): Ui {
    if (this[GATE].isInCellFunction) throw new Error('Cannot call SpreadsheetApp.getUi() from this context.');
    return new Ui(this.#state);
  }
  /** Waits until all that is queued is written; the gate throws what was refused. */
  flush(): void {}
  newConditionalFormatRule(): ConditionalFormatRuleBuilder {
    return new ConditionalFormatRuleBuilder(this.#state);
  }
  newDataValidation(): DataValidationBuilder {
    return new DataValidationBuilder(this[GATE]);
  }
}

guardService(SpreadsheetApp, 'SpreadsheetApp');
