/**
 * The map as a live block: a paddock list on top, the corners below, everything between them plain formulas.
 * Correct a corner in the sheet and its paddock's area, perimeter and posts follow.
 */
import { BLANK, formula, number, text } from '../../block/cells';
import { composeBlock } from '../../block/compose-block';
import type { ComposedBlock } from '../../block/composed-block';
import { TITLES } from '../../block/own-words';
import { CORNERS_TITLE } from '../../block/words';
import type { BlockCell, BlockStyle } from '../../contract';
import { fromInside, symbolOf, type UnitSystem } from '../../units/units';
import { NO_ADDED_COLUMNS } from '../added-columns';
import { type Draft, draftBlock, type Origin } from '../draft-block';
import { addLookOut, lookOutRows } from '../look-out';
import { addSettings, addUnits, type SettingValues } from '../settings';
import { addCorners, type CornerRows } from './corner-rows';
import { listHeadings, MAP_SETTINGS } from './map-block';
import type { KeptInMap } from './map-from-block';
import type { MeasuredMap, MeasuredPaddock } from './measure-map';
import * as words from './words';

const CAUTIONS = [words.SLOPE_CAUTION, words.DISTANCE_CAUTION];

export interface MapBlockInput {
  readonly map: MeasuredMap;
  readonly settings: SettingValues<'postSpacing'>;
  readonly units: UnitSystem;
  readonly origin: Origin;
  /** What stands beside the paddocks of the table that is written over. */
  readonly kept?: KeptInMap | undefined;
}

export function composeMapBlock(input: MapBlockInput): ComposedBlock {
  const { map, units, origin } = input;
  const { added = NO_ADDED_COLUMNS } = input.kept ?? {};
  const draft = draftBlock(origin);
  draft.add([text(TITLES.map)], 'title');
  for (const caution of words.HEAD_CAUTIONS) draft.add([text(caution)], 'warning');
  addUnits(draft, units);
  const { postSpacing } = addSettings(draft, MAP_SETTINGS, input.settings, units);
  const totalRow = draft.next();
  const firstRow = totalRow + 3;
  const lastRow = firstRow + map.paddocks.length - 1;
  // From the headings on: one paddock alone would be a range of one cell.
  const total = formula(`=SUM(${draft.down(firstRow - 1, lastRow, 1)})`, '#,##0.00');
  draft.add([text(`all paddocks together (${symbolOf('area', units)})`), total]);
  draft.add();
  // The corners come below the list, but the list's formulas point at them.
  const below = draftBlock({ row: lastRow + 4 + lookOutRows(CAUTIONS), column: origin.column });
  const corners = addCorners(below, map.paddocks, units, postSpacing);
  draft.add([...Object.values(listHeadings(units)), ...added.headings].map(text), 'heading');
  for (const paddock of map.paddocks) addPaddock(draft, paddock, corners, postSpacing, input);
  draft.add();
  draft.add([text(CORNERS_TITLE)], 'title');
  draft.add([text(words.NOT_FOLLOWING)], 'muted');
  addLookOut(draft, CAUTIONS);
  draft.rows.push(...below.rows);
  return {
    ...composeBlock(draft.rows),
    rules: [],
    widths: [170, 90, 100, 100, 160, 90, 100, 160, 110, 110],
  };
}

function addPaddock(
  draft: Draft,
  paddock: MeasuredPaddock,
  corners: CornerRows,
  postSpacing: string,
  { units, kept }: MapBlockInput,
): void {
  const { outline, holes } = corners.of(paddock.name);
  const inside = [outline, ...holes].map((rows) => `ABS(SUM(${corners.column(rows, 'piece')}))`).join('-');
  const perimeter = draft.at(draft.next(), 2);
  const typed = (kept?.added ?? NO_ADDED_COLUMNS).cells(paddock.name, draft.next());
  const cells: BlockCell[] = [
    text(paddock.name),
    formula(`=(${inside})/${corners.areaUnit}`, '0.00'),
    formula(`=SUM(${corners.column(outline, 'side')})`, '#,##0'),
    formula(`=IF(AND(${postSpacing}>0;${perimeter}>0);SUM(${corners.column(outline, 'gaps')});"")`, '0'),
    text(paddock.adjoining.join(', ')),
    distance(paddock.waterMeters, units) ?? kept?.toWater.get(paddock.name) ?? BLANK,
    distance(paddock.wellMeters, units) ?? kept?.toWell.get(paddock.name) ?? BLANK,
    kept?.notes.get(paddock.name) ?? BLANK,
    ...typed,
  ];
  const inputs = typed.map((): BlockStyle => 'input');
  draft.add(cells, ['plain', 'plain', 'plain', 'plain', 'plain', 'plain', 'plain', 'input', ...inputs]);
}

function distance(meters: number | undefined, units: UnitSystem): BlockCell | undefined {
  return meters === undefined ? undefined : number(fromInside(meters, 'length', units), '#,##0');
}
