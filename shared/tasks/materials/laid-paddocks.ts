import type { TabContent } from '../../contract';
import type { ListProblem, PaddockList, ReadPaddock } from '../../lists/model';
import { hasCell, type RowReader, readAmount, untold } from '../../lists/read-list-cell';
import type { UnitSystem } from '../../units/units';
import type { LaidPaddock } from './layout';

export interface LaidOut {
  readonly paddocks: readonly LaidPaddock[];
  readonly problems: readonly ListProblem[];
  /** Paddocks whose sides are guessed from their area alone. */
  readonly guessed: readonly string[];
}

/**
 * The paddocks of a list as things to fence: by width and length where the list has both, else by fence length,
 * else as a rectangle of the area: by the one side that the list has, or `shape` times as long as wide. `comma`: the spreadsheet's locale writes a decimal
 * comma.
 */
export function laidPaddocks(
  tab: TabContent,
  list: PaddockList,
  paddocks: readonly ReadPaddock[],
  { system, comma }: { readonly system: UnitSystem; readonly comma: boolean },
  shape: number,
): LaidOut {
  const problems: ListProblem[] = [];
  const laid = paddocks.map((paddock): LaidPaddock => {
    const row = paddock.cells.name?.row ?? list.firstRow;
    const reader: RowReader = { tab, list, row, system, comma, dates: {}, ...untold(), problems };
    return {
      name: paddock.name,
      ...sidesOf(paddock, reader, shape),
      ...(paddock.adjoins && { adjoins: paddock.adjoins }),
    };
  });
  const guessed = laid.filter(
    ({ guessedFromSquareMeters, givenSide }) => guessedFromSquareMeters !== undefined && !givenSide,
  );
  return { paddocks: laid, problems, guessed: guessed.map(({ name }) => name) };
}

function sidesOf(paddock: ReadPaddock, reader: RowReader, shape: number): Partial<LaidPaddock> {
  if (hasCell(reader, 'width') && hasCell(reader, 'length')) {
    const widthMeters = readAmount(reader, 'width', { above: 0 });
    const lengthMeters = readAmount(reader, 'length', { above: 0 });
    return widthMeters === undefined || lengthMeters === undefined ? {} : { widthMeters, lengthMeters };
  }
  if (paddock.fenceLengthMeters !== undefined) return { fenceMeters: paddock.fenceLengthMeters };
  const { areaSquareMeters } = paddock;
  const givenSide = (['width', 'length'] as const).find((side) => hasCell(reader, side));
  if (givenSide) {
    const given = readAmount(reader, givenSide, { above: 0 });
    if (given === undefined) return {};
    const other = areaSquareMeters / given;
    const [widthMeters, lengthMeters] = givenSide === 'width' ? [given, other] : [other, given];
    return { widthMeters, lengthMeters, guessedFromSquareMeters: areaSquareMeters, givenSide };
  }
  const widthMeters = Math.sqrt(areaSquareMeters / shape);
  return { widthMeters, lengthMeters: widthMeters * shape, guessedFromSquareMeters: areaSquareMeters };
}
