/**
 * Undo as in Sheets: everything that one call of the script writes is one step. The engine makes a revision of each
 * change; while a call runs its changes are collected, and at its end they become one revision.
 */
import type { Engine, EngineCommand } from './engine';

/** Commands that tell where a call of the script begins and ends. */
export const CALL_START = 'SOUNDER_CALL_START';
export const CALL_END = 'SOUNDER_CALL_END';

type Save = (command: EngineCommand, commands: readonly EngineCommand[], changes: readonly unknown[]) => void;
type Session = { save: Save };
type History = { session: Session; handle(command: EngineCommand): void };
type HistoryClass = new (...values: unknown[]) => History;

export function groupHistoryByCall(engine: Engine): void {
  const registry = engine.registries.featurePluginRegistry;
  const Base = registry.get('history') as unknown as HistoryClass;

  class CallHistory extends Base {
    private saveCall: ((end: EngineCommand) => void) | undefined;

    override handle(command: EngineCommand): void {
      const type = command.type as string;
      if (type === CALL_START) this.saveCall ??= collectSaves(this.session);
      else if (type === CALL_END) this.endCall(command);
      else super.handle(command);
    }

    private endCall(command: EngineCommand): void {
      const save = this.saveCall;
      this.saveCall = undefined;
      save?.(command);
    }
  }
  registry.replace('history', CallHistory as never);
}

/** Holds back what the session would save; the function returned saves it all at once. */
function collectSaves(session: Session): (end: EngineCommand) => void {
  const allCommands: EngineCommand[] = [];
  const allChanges: unknown[] = [];
  const save = session.save;
  session.save = (_, commands, changes) => {
    // What changed nothing is not kept, as the session itself does.
    if (commands.length === 0 || changes.length === 0) return;
    for (const command of commands) allCommands.push(command);
    for (const change of changes) allChanges.push(change);
  };
  return (end) => {
    session.save = save;
    session.save(end, allCommands, allChanges);
  };
}
