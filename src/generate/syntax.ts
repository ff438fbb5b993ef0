/** Finding parts of a script by their syntax, and cutting them out. */

export type Node = { type: string; start: number; end: number; key?: { name?: string } } & Record<
  string,
  unknown
>;

/** Nodes that are wanted, outermost first. */
export function nodesIn(node: Node, isWanted: (node: Node) => boolean): Node[] {
  if (isWanted(node)) return [node];
  return Object.values(node)
    .flat()
    .filter((child): child is Node => typeof (child as Node | null)?.type === 'string')
    .flatMap((child) => nodesIn(child, isWanted));
}

/** The code without these parts, each with the comma behind it. */
export function cut(code: string, parts: readonly Node[]): string {
  return [...parts]
    .sort((a, b) => b.start - a.start)
    .reduce((text, { start, end }) => text.slice(0, start) + text.slice(end).replace(/^\s*,/, ''), code);
}
