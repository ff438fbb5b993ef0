/** The name, or the name with the first number that no tab has yet: "Rotation", "Rotation 2". */
export function freeTabName(name: string, tabs: readonly string[]): string {
  const taken = new Set(tabs.map((tab) => tab.toLowerCase()));
  let free = name;
  for (let i = 2; taken.has(free.toLowerCase()); i++) free = `${name} ${i}`;
  return free;
}
