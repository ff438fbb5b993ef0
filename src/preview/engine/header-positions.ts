/**
 * Where rows and columns lie on the screen is measured when somebody looks. The engine itself measures every row of every
 * tab after each command.
 */
import type { Engine } from './engine';

type Dimension = 'COL' | 'ROW';
type Offsets = Readonly<Record<number, number>>;
type Plugin = {
  computeHeaderPositionsOfSheet(sheetId: string): Readonly<Record<Dimension, Offsets>>;
  computePositions(sheetId: string, dimension: Dimension): Offsets;
};

export function measureWhenLooked(engine: Engine): void {
  const registry = engine.registries.statefulUIPluginRegistry;
  const Base = registry.get('header_positions') as unknown as new (...values: unknown[]) => Plugin;

  class HeaderPositions extends Base {
    override computeHeaderPositionsOfSheet(sheetId: string): Readonly<Record<Dimension, Offsets>> {
      const known: { [Key in Dimension]?: Offsets } = {};
      const of = (dimension: Dimension): Offsets => {
        known[dimension] ??= this.computePositions(sheetId, dimension);
        return known[dimension];
      };
      return {
        get COL() {
          return of('COL');
        },
        get ROW() {
          return of('ROW');
        },
      };
    }
  }
  registry.replace('header_positions', HeaderPositions as never);
}

type View = { viewports: { viewports: object }; sheetsWithDirtyViewports: Set<string>; finalize(): void };

/** Where there is no screen, what part of a tab is on it is forgotten after each command and worked out where it is asked for. */
export function forgetScreen(engine: Engine): void {
  const registry = engine.registries.statefulUIPluginRegistry;
  const Base = registry.get('viewport') as unknown as new (...values: unknown[]) => View;

  class Unseen extends Base {
    override finalize(): void {
      this.viewports.viewports = {};
      this.sheetsWithDirtyViewports.clear();
    }
  }
  registry.replace('viewport', Unseen as never);
}
