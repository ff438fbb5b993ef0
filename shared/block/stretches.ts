/** Each stretch of rows or columns without a gap, so that nothing between them is touched. `numbers` go upwards. */
export function stretches(
  numbers: readonly number[],
): readonly { readonly first: number; readonly count: number }[] {
  return numbers
    .filter((number) => !numbers.includes(number - 1))
    .map((first) => {
      let count = 1;
      while (numbers.includes(first + count)) count++;
      return { first, count };
    });
}
