/** Each stretch of rows without a gap, so that nothing between them is touched. `rows` go upwards. */
export function stretches(
  rows: readonly number[],
): readonly { readonly first: number; readonly count: number }[] {
  return rows
    .filter((row) => !rows.includes(row - 1))
    .map((first) => {
      let count = 1;
      while (rows.includes(first + count)) count++;
      return { first, count };
    });
}
