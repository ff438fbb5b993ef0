import { Notice } from './notice';

/** A cell below a table to type into that looks like a row of it and is none. */
export function NotPart({ apart }: { apart: string | undefined }) {
  if (apart === undefined) return null;
  return (
    <Notice kind="warning">
      What stands from {apart} on is not part of this table and does not count. Rows that belong to it stand
      right below its last row, without a blank row or a line of words between.
    </Notice>
  );
}
