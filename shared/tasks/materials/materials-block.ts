/** The materials list as a block of cells: list on top, then the comparison, the settings and the layout. */

import { BLANK, text } from '../../block/cells';
import { composeBlock } from '../../block/compose-block';
import type { ComposedBlock } from '../../block/composed-block';
import { TITLES } from '../../block/own-words';
import type { ListSource, PaddockList } from '../../lists/model';
import type { UnitSystem } from '../../units/units';
import { type Draft, draftBlock, type Origin } from '../draft-block';
import { addLookOut } from '../look-out';
import { addSettings, addUnits, type SettingValues } from '../settings';
import type { ComparisonKey, TypedComparison } from './comparison-model';
import { addComparison } from './comparison-rows';
import { FENCE_WORDS, type FenceKind, fenceType, otherSettings } from './fence-types';
import { addFigures } from './figure-rows';
import { addItems, itemRowCount, itemsOf, type OwnItem, type TypedItem } from './item-rows';
import type { Layout } from './layout';
import { addLayout, setSize } from './layout-rows';
import type { AtATime } from './material-needs';
import { MATERIALS_SETTINGS, type MaterialsKey, type MaterialsSettings } from './materials-settings';
import * as words from './words';

export const MATERIALS_BLOCK = 'SOUNDER_MATERIALS';
export const AT_A_TIME_LABEL = 'Paddocks fenced at a time';
export const KIND_LABEL = 'Kind of fence';

export interface MaterialsPlan {
  readonly layout: Layout;
  readonly atATime: AtATime;
  readonly kind: FenceKind;
  readonly units: UnitSystem;
  /** In cell units. */
  readonly settings: MaterialsSettings;
  readonly comparison: SettingValues<ComparisonKey>;
  /** The grower's paddock list, so that the sheet looks sides up there. */
  readonly list?: ListSource<PaddockList>;
}

/** What stands typed in the block that is rebuilt. */
export interface MaterialsTyped extends TypedComparison {
  readonly items: ReadonlyMap<string, TypedItem>;
  readonly own: readonly OwnItem[];
}

/** Cautions that stand beside the list, in the sheet and in the sidebar. */
export function materialsCautions(kind: FenceKind): readonly string[] {
  const [first = '', ...others] = words.CAUTIONS;
  return [first, ...fenceType(kind).cautions, ...others];
}

const OTHER_KIND_TITLE = 'For another kind of fence: not counted here, kept for when you change';

const WIDTHS = [260, 170, 110, 110, 110, 110, 110, 260, 110];

export function materialsBlock(plan: MaterialsPlan, typed: MaterialsTyped, origin: Origin): ComposedBlock {
  const list = draftBlock(origin);
  const listed = itemsOf(plan.kind, typed.items);
  list.add([text(TITLES.materials)], 'title');
  list.add([text(words.TYPE_HERE)], 'muted');
  list.add([text(words.HEAD_CAUTION)], 'warning');
  const below = draftBlock({
    row: list.next() + itemRowCount(listed.length, typed.own.length) + 1,
    column: origin.column,
  });
  addLookOut(below, materialsCautions(plan.kind));
  const { set, fence } = addGround(below, plan);
  const figure = addFigures(fence, plan.atATime, {
    draft: below,
    units: plan.units,
    set,
    kind: plan.kind,
    strands: plan.settings.strands ?? 1,
  });
  const items = addItems(
    { draft: list, units: plan.units, set, figure, kind: plan.kind },
    listed,
    typed.items,
    typed.own,
  );
  list.add();
  below.add();
  const lengths = { portable: figure.line, fixed: figure.fixed, corners: fence.all.corners };
  addComparison({ draft: below, units: plan.units, lengths, items, typed }, plan.comparison);
  const { cells, styles, ids } = composeBlock([...list.rows, ...below.rows]);
  return { cells, styles, ids, rules: [], widths: cells[0]?.map((_, c) => WIDTHS[c] ?? 110) ?? [] };
}

function addGround(draft: Draft, { layout, atATime, kind, units, settings, list }: MaterialsPlan) {
  draft.add([text('Settings')], 'heading');
  addUnits(draft, units);
  draft.add(
    [text(KIND_LABEL), text(FENCE_WORDS[kind]), BLANK, text(words.WRITE_TO_CHANGE)],
    ['plain', 'plain', 'muted', 'muted'],
  );
  const others = otherSettings(kind);
  const isOther = ({ key }: { key: MaterialsKey }): boolean => others.includes(key);
  const counted = addSettings(
    draft,
    MATERIALS_SETTINGS.filter((spec) => !isOther(spec)),
    settings,
    units,
  );
  const many = atATime.kind === 'set';
  draft.add(
    [
      text(AT_A_TIME_LABEL),
      many ? { k: 'n', v: atATime.paddocks } : text('all'),
      text('paddocks'),
      text(many ? words.STANDS_AND_NEXT : words.WRITE_TO_CHANGE),
    ],
    ['plain', 'plain', 'muted', 'muted'],
  );
  draft.add([text(OTHER_KIND_TITLE)], 'muted');
  const set = { ...counted, ...addSettings(draft, MATERIALS_SETTINGS.filter(isOther), settings, units) };
  const { pieces, pieceLength } = fenceType(kind);
  const fence = addLayout(layout, {
    draft,
    units,
    pieces,
    pieceLength: set[pieceLength],
    shape: set.shape,
    list,
    setPaddocks: setSize(atATime),
  });
  return { set, fence };
}
