type Rectangle = {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
};

/** True where one rectangle of a tab lies wholly inside another of the same tab. */
export function isWithin(inner: Rectangle, outer: Rectangle): boolean {
  return (
    inner.row >= outer.row &&
    inner.column >= outer.column &&
    inner.row + inner.rows <= outer.row + outer.rows &&
    inner.column + inner.columns <= outer.column + outer.columns
  );
}
