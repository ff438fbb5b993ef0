/** Finds the top-level functions of a built script and the help text of its cell functions, by reading its text. */
import type { CellFunctionHelp } from '../engine/cell-functions';

export type ScriptText = {
  /** Names of all top-level functions. */
  functionNames: string[];
  cellFunctions: CellFunctionHelp[];
};

/** A top-level declaration, with the comment that stands directly above it. */
const DECLARATION = /(?:\/\*\*((?:[^*]|\*(?!\/))*)\*\/[ \t]*\r?\n)?^function ([A-Za-z_$][\w$]*)\(([^)]*)\)/gm;

export function readScript(code: string): ScriptText {
  const found: ScriptText = { functionNames: [], cellFunctions: [] };
  for (const [, comment, name = '', parameters = ''] of code.matchAll(DECLARATION)) {
    found.functionNames.push(name);
    if (comment && /@customfunction\b/.test(comment)) {
      const names = parameters
        .split(',')
        .map((parameter) => parameter.trim())
        .filter(Boolean);
      found.cellFunctions.push(readHelp(name, names, comment));
    }
  }
  return found;
}

function readHelp(name: string, parameters: string[], comment: string): CellFunctionHelp {
  const text = comment
    .split(/\r?\n/)
    .map((line) => line.replace(/^\s*\*? ?/, '').trimEnd())
    .join('\n');
  const [description = '', ...tags] = text.split(/^@/m);
  const helpOf = (parameter: string): string => {
    const tag = tags.find((one) => new RegExp(`^param\\s+(\\{[^}]*\\}\\s+)?${parameter}\\b`).test(one)) ?? '';
    return oneLine(tag.replace(new RegExp(`^param\\s+(\\{[^}]*\\}\\s+)?${parameter}\\b`), ''));
  };
  return {
    name,
    description: oneLine(description),
    parameters: parameters.map((parameter) => ({ name: parameter, help: helpOf(parameter) })),
  };
}

function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}
