/** Names and words of our own tables that whoever looks for the grower's lists, or for our tables, must know. */
export const ROTATION_NAME = 'SOUNDER_ROTATION';
export const MAP_BLOCK = 'SOUNDER_MAP';
/** How the name of the mark of an original begins; see original-mark.ts. */
export const MARK_NAME = 'SOUNDER_ORIGINAL_';

/** Tables of ours in the order in which their tabs stand: Today first, then that of the tasks, the mark last. */
export const TAB_ORDER: readonly string[] = [
  'SOUNDER_TODAY',
  ROTATION_NAME,
  'SOUNDER_SEASON',
  'SOUNDER_HERD',
  MAP_BLOCK,
  'SOUNDER_MATERIALS',
  'SOUNDER_TRAINING_PEN',
  'SOUNDER_TRAINING_LOG',
  'SOUNDER_BITE',
  'SOUNDER_FENCE_WALK',
  'SOUNDER_BUDGET',
];

/** Headings that only our own table of moves has. */
export const MOVE_KEYS = { group: 'Group key', paddock: 'Paddock key' } as const;

/** Headings that only our own table of stays has. */
export const STAY_KEYS = { inDay: 'Stay in', weighed: 'Since weighed' } as const;

/** How the titles of our tables begin: by them one whose memory was deleted is still known. */
export const TITLES = {
  rotation: 'Rotation',
  picture: 'Paddocks by week, ',
  map: 'Paddocks on the map',
  materials: 'Fence materials',
  walk: 'Fence walk',
  bite: 'Will it bite?',
  budget: 'Feed, water, shelter and ground',
  pen: 'Training pen',
  log: 'Training log',
  herd: 'Herd log',
  today: 'Today',
  mark: 'This file and its copies',
} as const;
