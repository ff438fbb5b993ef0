/**
 * How the engine calculates, where it is done otherwise here: only when somebody looks, only the part of a tab that is used,
 * and with blank results kept. The engine itself calculates every cell of every tab at each change of a name, a column or
 * a rule, and a script that writes a table makes dozens of those before it reads.
 */
import { type BlankKeeper, keepBlankResults } from './blank-results';
import type { Engine, EngineCommand, EngineModel, EngineZone } from './engine';
import { hooksIn } from './host-hooks';

type Getters = EngineModel['getters'];
type Evaluator = BlankKeeper & {
  evaluatedCells: object;
  evaluate(ranges: { sheetId: string; zone: EngineZone }[]): void;
  evaluateAllCells(): void;
};
type Config = { custom: object; getters: Getters };
type Plugin = {
  evaluator: Evaluator;
  shouldRebuildDependenciesGraph: boolean;
  positionsToUpdate: readonly unknown[];
  beforeHandle(command: EngineCommand): void;
  handle(command: EngineCommand): void;
  finalize(): void;
};

export function adaptEvaluation(engine: Engine): void {
  const registry = engine.registries.coreViewsPluginRegistry;
  const Base = registry.get('evaluation') as unknown as new (config: Config) => Plugin;

  class Evaluation extends Base {
    /** Something has changed since the cells were calculated. */
    private isDue = false;
    /** While a command is being carried out, or cells are, what was calculated before counts. */
    private isBusy = false;

    constructor(config: Config) {
      super(config);
      const { evaluator } = this;
      evaluateUsedCells(evaluator, config.getters);
      keepBlankResults(evaluator, () => hooksIn(config.custom)?.modes.blankStaysBlank === true);
      const upToDate = (): Evaluator => {
        if (this.isDue && !this.isBusy) this.calculate();
        return evaluator;
      };
      Object.defineProperty(this, 'evaluator', { get: upToDate });
    }

    override beforeHandle(command: EngineCommand): void {
      this.isBusy = true;
      super.beforeHandle(command);
    }

    override handle(command: EngineCommand): void {
      if (command.type === 'EVALUATE_CELLS' && !command.cellIds) this.shouldRebuildDependenciesGraph = true;
      else super.handle(command);
    }

    override finalize(): void {
      this.isBusy = false;
      this.isDue ||= this.shouldRebuildDependenciesGraph || this.positionsToUpdate.length > 0;
    }

    private calculate(): void {
      this.isDue = false;
      this.isBusy = true;
      try {
        super.finalize();
      } finally {
        this.isBusy = false;
      }
    }
  }
  registry.replace('evaluation', Evaluation as never);
}

/** Beyond the last cell that holds anything there is nothing to calculate; what spills there is set by its formula. */
function evaluateUsedCells(evaluator: Evaluator, getters: Getters): void {
  const Positions = evaluator.evaluatedCells.constructor as new () => object;
  evaluator.evaluateAllCells = () => {
    evaluator.evaluatedCells = new Positions();
    evaluator.evaluate(
      getters.getSheetIds().flatMap((sheetId) => {
        const zone = { left: 0, top: 0, right: -1, bottom: -1 };
        for (const { id } of getters.getCells(sheetId)) {
          const { row, col } = getters.getCellPosition(id);
          zone.right = Math.max(zone.right, col);
          zone.bottom = Math.max(zone.bottom, row);
        }
        return zone.right < 0 ? [] : [{ sheetId, zone }];
      }),
    );
  };
}
