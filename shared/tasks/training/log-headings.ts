/** Headings of the training log, and the words that stand under Status. */
export const LOG_INPUTS = [
  'Pig or batch',
  'Group',
  'Head',
  'In the pen on',
  'Saw the wire on',
  'Backed off on',
  'Passed check on',
  'Observer',
] as const;
export const LOG_RESULTS = ['Days in', 'Status', 'Still missing', 'Ready from', 'Group ready from'] as const;
export const LOG_REMARKS = ['Seller says trained', 'Note'] as const;
export const LOG_HEADINGS = [...LOG_INPUTS, ...LOG_RESULTS, ...LOG_REMARKS] as const;

export const NOT_READY = 'not ready';
export const NAME_MISSING = 'name missing';
