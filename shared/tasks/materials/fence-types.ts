/** What a fence can be made of. A kind of fence is data: what it is counted in, what it takes, what loads its energizer. */
import type { MaterialItem } from './material-needs';
import type { MaterialsKey } from './materials-settings';
import * as words from './words';

export interface FenceType {
  readonly words: string;
  /** What the line is put up in: posts at most so far apart, or whole nets. */
  readonly pieces: 'posts' | 'nets';
  readonly piecesLabel: string;
  readonly pieceNote: string;
  /** The length that one piece covers. */
  readonly pieceLength: MaterialsKey;
  readonly items: readonly MaterialItem[];
  /** Settings that count for this kind alone. */
  readonly settings: readonly MaterialsKey[];
  /** Settings that multiply the joules of the line. */
  readonly loads: readonly MaterialsKey[];
  /** Hung at heights by the size of the pigs. */
  readonly isHung: boolean;
  readonly cautions: readonly string[];
}

const FOR_ALL = ['signs', 'energizer', 'rods', 'clamps', 'cable', 'tester'] as const;

export const FENCE_TYPES = {
  wire: {
    words: 'Wire on posts',
    pieces: 'posts',
    piecesLabel: 'Posts along it, corners among them',
    pieceNote: words.EVEN_POSTS,
    pieceLength: 'postSpacing',
    items: ['linePosts', 'cornerPosts', 'rolls', 'reels', 'insulators', 'gateHandles', ...FOR_ALL],
    settings: [
      'strands',
      'postSpacing',
      'spares',
      'allowance',
      'rollLength',
      'reelLength',
      'lineInsulators',
      'gates',
    ],
    loads: ['loadFactor'],
    isHung: true,
    cautions: [],
  },
  netting: {
    words: 'Netting, with its posts in it',
    pieces: 'nets',
    piecesLabel: 'Nets along it',
    pieceNote: words.WHOLE_NETS,
    pieceLength: 'netLength',
    items: ['nets', 'cornerPosts', 'guys', ...FOR_ALL],
    settings: ['netLength', 'netStrings'],
    loads: ['loadFactor', 'netStrings'],
    isHung: false,
    cautions: [words.NETTING_CAUTION],
  },
} as const satisfies Readonly<Record<string, FenceType>>;
export type FenceKind = keyof typeof FENCE_TYPES;

export function fenceType(kind: FenceKind): FenceType {
  return FENCE_TYPES[kind];
}

/** For the form and for the table's own cell. */
export const FENCE_WORDS = Object.fromEntries(
  Object.entries(FENCE_TYPES).map(([kind, { words }]) => [kind, words]),
) as Readonly<Record<FenceKind, string>>;

/** Settings of another kind of fence than this one. */
export function otherSettings(kind: FenceKind): readonly MaterialsKey[] {
  const kinds = Object.keys(FENCE_TYPES) as FenceKind[];
  return kinds.filter((other) => other !== kind).flatMap((other) => fenceType(other).settings);
}
