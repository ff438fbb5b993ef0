/** The wires' part of the block: make-up typed, ohms calculated, or ohms typed. */
import { answer, BLANK, formula, number, text } from '../../block/cells';
import type { BlockCell, BlockStyle } from '../../contract';
import { fromInside, symbolOf, type UnitSystem } from '../../units/units';
import type { Draft } from '../draft-block';
import type { Wire } from './wires';

/** A wire of the table: by its make-up, or with Ω per 1000 ft or km as typed. */
export type WireRow = Wire & { readonly typedOhms?: number };

export const WIRE_HEADINGS = [
  'Wire',
  'Metal',
  'Thickness',
  'Strands',
  'Second metal',
  'Thickness of it',
  'Strands of it',
  'Ohms typed',
  'Ohms together',
  'Ohms, first',
  'Ohms, second',
] as const;

/** Rows left free for further wires. */
const FREE_WIRES = 2;
export const OHMS = '#,##0.0';
/** Thickness as people write it; 0.2 mm is 0.007874 in. */
const THICKNESS_DIGITS = 6;
const THICKNESS = '0.0###';

/** Ranges of names and ohms, to look a wire up. */
export interface WireTable {
  readonly names: string;
  readonly ohms: string;
}

const WIRE_STYLES: readonly BlockStyle[] = [
  ...Array<BlockStyle>(8).fill('input'),
  'plain',
  'working',
  'working',
];

export function addWires(
  draft: Draft,
  { wires, units }: { readonly wires: readonly WireRow[]; readonly units: UnitSystem },
): WireTable {
  draft.add([text('Wires: make-up, or ohms typed')], 'heading');
  const thick = symbolOf('diameter', units);
  const per = symbolOf('ohmsPerLength', units);
  draft.add(
    ['', '', thick, '', '', thick, '', per, per, per, per].map((word) => text(word)),
    'muted',
  );
  draft.add(WIRE_HEADINGS.map(text), 'heading');
  const anchor = draft.next();
  const count = wires.length + FREE_WIRES;
  const column = (at: number): string => draft.down(anchor, anchor + count, at);
  const ohms = (at: number): string =>
    `=WIRE_OHMS(${column(at)};${column(at + 1)};${column(at + 2)};"${units}")`;
  draft.add([...Array<BlockCell>(9).fill(BLANK), formula(ohms(1), OHMS), formula(ohms(4), OHMS)]);
  for (let at = 0; at < count; at++) {
    const row = draft.next();
    const [typed, one, two] = [7, 9, 10].map((c) => draft.at(row, c));
    draft.add(
      [
        ...wireCells(wires[at], units),
        formula(
          `=IF(${typed}<>"";${typed};IF(${one}="";"";IF(${two}="";${one};1/(1/${one}+1/${two}))))`,
          OHMS,
        ),
        answer(OHMS),
        answer(OHMS),
      ],
      WIRE_STYLES,
    );
  }
  return { names: column(0), ohms: column(8) };
}

function wireCells(wire: WireRow | undefined, units: UnitSystem): BlockCell[] {
  if (!wire) return Array<BlockCell>(8).fill(BLANK);
  const strands = [0, 1].flatMap((at): BlockCell[] => {
    const strand = wire.strands[at];
    if (!strand) return [BLANK, BLANK, BLANK];
    const thick = fromInside(strand.diameterMeters, 'diameter', units);
    return [
      text(strand.metal),
      number(Number(thick.toPrecision(THICKNESS_DIGITS)), THICKNESS),
      number(strand.wires),
    ];
  });
  return [text(wire.name), ...strands, wire.typedOhms === undefined ? BLANK : number(wire.typedOhms)];
}
