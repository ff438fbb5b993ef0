/**
 * What the sidebar and the script say to each other: JSON text both ways, checked on arrival.
 *
 * The page thinks, the script only reads and writes. So there are few calls, all of them general: read tabs,
 * read the selection, write a block, change cells. Dates travel as {"d":"2026-04-01"},
 * never as Date; blanks as ''.
 */
import * as v from 'valibot';

/**
 * A cell on its way to the page: number, text, TRUE/FALSE, '' for blank, or a date, with its time of day where it has
 * one: {"d":"2026-04-01T14:30:00"}.
 */
export const WireCell = v.union([v.number(), v.string(), v.boolean(), v.object({ d: v.string() })]);
export type WireCell = v.InferOutput<typeof WireCell>;

/** Row and column, by offsets from the block's corner, of the cell in the old block whose look and format are kept. */
const from = v.optional(v.array(v.number()) as unknown as v.GenericSchema<[number, number]>);
const A_FORMULA = /^=/;
const A_DAY = /^\d{4}-\d\d-\d\d(T\d\d:\d\d:\d\d)?$/;
const A_COLOUR = /^#[0-9a-f]{6}$/i;
const A_NAME = /^SOUNDER_[A-Z][A-Z_]*$/;
const matching = (pattern: RegExp) =>
  v.custom<string>((input) => typeof input === 'string' && pattern.test(input));

type Shape = v.ObjectSchema<v.ObjectEntries, undefined>;
/** The shape that says of itself what the input says under `key`. Smaller in the script than the library's variant. */
const oneOf = <const Shapes extends readonly [Shape, ...Shape[]]>(
  key: string,
  shapes: Shapes,
): v.GenericSchema<v.InferOutput<Shapes[number]>> =>
  v.lazy((input) => {
    const said = (input as Record<string, unknown> | null)?.[key];
    return (
      shapes.find(
        ({ entries }) => (entries[key] as v.LiteralSchema<v.Literal, undefined>).literal === said,
      ) ?? shapes[0]
    );
  }) as unknown as v.GenericSchema<v.InferOutput<Shapes[number]>>;

/** A cell on its way to the sheet. Only kind "f" becomes a formula; "t" stays text whatever it begins with. */
export const BlockCell = oneOf('k', [
  /** `format` is for what is typed or spilled here later; `answer`: a function of ours spills into it. */
  v.object({
    k: v.literal('blank'),
    format: v.optional(v.string()),
    answer: v.optional(v.literal(true)),
    from,
  }),
  v.object({ k: v.literal('t'), v: v.string(), from }),
  v.object({ k: v.literal('n'), v: v.number(), format: v.optional(v.string()), from }),
  /** `box`: shown as a box to tick. */
  v.object({ k: v.literal('b'), v: v.boolean(), box: v.optional(v.literal(true)), from }),
  v.object({ k: v.literal('d'), v: matching(A_DAY), from }),
  /** A formula in A1 notation with `;` between arguments. `format` is a number format; "@" is refused. */
  v.object({
    k: v.literal('f'),
    v: matching(A_FORMULA),
    format: v.optional(v.string()),
    from,
  }),
]);
export type BlockCell = v.InferOutput<typeof BlockCell>;

const STYLES = [
  'plain',
  'name',
  'title',
  'heading',
  'input',
  'muted',
  'working',
  'note',
  'warning',
  'memory',
] as const;
/** How a cell looks. Colours are never the only sign of anything. */
export const BlockStyle = v.custom<(typeof STYLES)[number]>((input) =>
  (STYLES as readonly unknown[]).includes(input),
);
export type BlockStyle = v.InferOutput<typeof BlockStyle>;

/** One conditional colour: a rectangle of the block, by offsets from its corner, where `formula` is TRUE. */
export const BlockRule = v.object({
  row: v.number(),
  column: v.number(),
  rows: v.number(),
  columns: v.number(),
  /** A plain spreadsheet formula for the rectangle's first cell. */
  formula: matching(A_FORMULA),
  background: matching(A_COLOUR),
});
export type BlockRule = v.InferOutput<typeof BlockRule>;

export const TabInfo = v.object({
  name: v.string(),
  /** Size of the used part, from A1. */
  rows: v.number(),
  columns: v.number(),
});
export type TabInfo = v.InferOutput<typeof TabInfo>;

/** A block of ours, found by its named range. */
export const BlockInfo = v.object({
  /** Named range, for example SOUNDER_ROTATION. */
  name: v.string(),
  tab: v.string(),
  row: v.number(),
  column: v.number(),
  rows: v.number(),
  columns: v.number(),
});
export type BlockInfo = v.InferOutput<typeof BlockInfo>;

/** What of a file beside its cells decides how they are read. */
const FileFacts = v.object({
  locale: v.string(),
  timeZone: v.string(),
  /** Today in the spreadsheet's time zone. */
  today: v.string(),
  tabs: v.array(TabInfo),
  blocks: v.array(BlockInfo),
  /** Names of tabs without cells, such as charts: they are passed over. */
  passedOver: v.array(v.string()),
});

/** What the page needs before it reads the file: where the grower stands, and our blocks. */
export const Overview = v.object({ activeTab: v.string(), blocks: v.array(BlockInfo) });
export type Overview = v.InferOutput<typeof Overview>;

export const TabContent = v.object({
  name: v.string(),
  values: v.array(v.array(WireCell)),
  /** Formula text where the cell holds one, else ''. Same shape as values. */
  formulas: v.array(v.array(v.string())),
});
export type TabContent = v.InferOutput<typeof TabContent>;

/** The whole file in one call: what it is, and what stands on each tab that holds anything. */
export const WholeFile = v.object({ overview: FileFacts, tabs: v.array(TabContent) });
export type WholeFile = v.InferOutput<typeof WholeFile>;

export const Selection = v.object({
  tab: v.string(),
  a1: v.string(),
  row: v.number(),
  column: v.number(),
  rows: v.number(),
  columns: v.number(),
  values: v.array(v.array(WireCell)),
});
export type Selection = v.InferOutput<typeof Selection>;

const Rectangle = {
  tab: v.string(),
  row: v.number(),
  column: v.number(),
  rows: v.number(),
  columns: v.number(),
};

/** Where a block goes: over our own block of that name, on a new tab, or into an empty area. */
export const BlockPlace = oneOf('at', [
  v.object({
    at: v.literal('own'),
    /** The block as the page has read it, rows and columns that it takes in among them; absent: as its name says. */
    area: v.optional(v.object(Rectangle)),
    /** Column of its memory, where it has one: hidden on a tab of ours. */
    memoryColumn: v.optional(v.number()),
    /** Rows through the headings that stand: where exactly these are frozen, `freezeRows` are from now on. */
    frozenRows: v.optional(v.number()),
  }),
  /** `before`: the tab in front of which it goes; absent: behind all others. */
  v.object({ at: v.literal('new-tab'), tab: v.string(), before: v.optional(v.string()) }),
  v.object({ at: v.literal('area'), tab: v.string(), row: v.number(), column: v.number() }),
]);
export type BlockPlace = v.InferOutput<typeof BlockPlace>;

export const WriteBlock = v.object({
  name: matching(A_NAME),
  place: BlockPlace,
  /** The block of that name that stands elsewhere stays as it is, without the name. */
  replaces: v.optional(v.literal(true)),
  /** The last cell of the first row is the block's stamp, another at every write: where it stands, the block is in. */
  cells: v.array(v.array(BlockCell)),
  styles: v.array(v.array(BlockStyle)),
  rules: v.array(BlockRule),
  /** Columns to widen, in pixels, one per column; 0 leaves the width alone. */
  widths: v.array(v.number()),
  /** Rows at the top of a new tab to freeze; 0 leaves it alone. In place, see `frozenRows`. */
  freezeRows: v.number(),
  /** Columns at the left of a new tab to freeze. */
  freezeColumns: v.optional(v.number()),
  /**
   * For place "own": what the page last read there, as blockFingerprint() of values and formulas. If the sheet
   * says otherwise now, somebody typed meanwhile and nothing is written.
   */
  expects: v.optional(v.string()),
  /** The file as the page has read it, as fileFingerprint(). Where it says otherwise now, it is the answer. */
  file: v.optional(v.string()),
  /** The time zone as the page has read it with the file. */
  timeZone: v.optional(v.string()),
});
export type WriteBlock = v.InferOutput<typeof WriteBlock>;

export const WriteDone = v.object({
  block: BlockInfo,
  a1: v.string(),
  /** What could not be done once the cells were in, for example colours; '' where all is well. */
  note: v.string(),
  /** The tab as it stands with the block; absent where it could not be read. */
  tab: v.optional(TabContent),
});
export type WriteDone = v.InferOutput<typeof WriteDone>;

/** Nothing was written: the file is another by now, this one. */
export const FileChanged = v.object({ changed: WholeFile });
export type FileChanged = v.InferOutput<typeof FileChanged>;

/** A cell that gets another content: what was read there, and what is to stand there. */
export const CellChange = v.object({
  tab: v.string(),
  row: v.number(),
  column: v.number(),
  before: BlockCell,
  after: BlockCell,
});
export type CellChange = v.InferOutput<typeof CellChange>;

/** An area to empty, with what the page last read there. */
const Emptied = v.object({ ...Rectangle, expects: v.string() });

/** What to empty in a copy. */
export const ClearInCopy = v.object({
  /** Cells of our own blocks, with what the page last read of those blocks. */
  areas: v.array(v.object(Rectangle)),
  blocks: v.array(v.object({ name: v.string(), expects: v.string() })),
  /** Rows of the grower's lists. */
  rows: v.array(Emptied),
  /** Whole tables of ours, looks and all, in this order. */
  tables: v.array(Emptied),
});
export type ClearInCopy = v.InferOutput<typeof ClearInCopy>;

/** Every call: its name, what goes in and what comes out. */
export const CALLS = {
  overview: { request: v.object({}), reply: Overview },
  readFile: { request: v.object({}), reply: WholeFile },
  readTabs: { request: v.object({ tabs: v.array(v.string()) }), reply: v.array(TabContent) },
  readSelection: { request: v.object({}), reply: Selection },
  writeBlock: { request: WriteBlock, reply: v.union([WriteDone, FileChanged]) },
  /** Single cells, at the grower's wish: all of them, or none where one no longer holds what was read. */
  changeCells: {
    request: v.object({ cells: v.array(CellChange) }),
    reply: v.object({ cells: v.number() }),
  },
  /** The name that marks this file as an original: it differs in every copy. */
  fileMark: { request: v.object({}), reply: v.object({ mark: v.string(), title: v.string() }) },
  /** Refused in the original, and where it is not known to be a copy. */
  clearInCopy: { request: ClearInCopy, reply: v.object({ cells: v.number() }) },
  /** A drawing of the page in a window of its own, with a button to print it. */
  showDrawing: { request: v.object({ title: v.string(), svg: v.string() }), reply: v.object({}) },
  /** Selects a cell in the sheet. */
  showCell: {
    request: v.object({ tab: v.string(), row: v.number(), column: v.number() }),
    reply: v.object({}),
  },
  startSample: { request: v.object({ sample: v.string() }), reply: v.object({ tabs: v.array(v.string()) }) },
} as const;
export type CallName = keyof typeof CALLS;
export type Request<Name extends CallName> = v.InferOutput<(typeof CALLS)[Name]['request']>;
export type Reply<Name extends CallName> = v.InferOutput<(typeof CALLS)[Name]['reply']>;

/** What travels back: either the reply or a sentence for the grower. */
export const Envelope = oneOf('ok', [
  v.object({ ok: v.literal(true), data: v.unknown() }),
  v.object({ ok: v.literal(false), error: v.string() }),
]);
export type Envelope = v.InferOutput<typeof Envelope>;
