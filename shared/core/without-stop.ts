/** Words of somebody else without the full stop at their end, for a sentence that goes on or ends after them. */
export function withoutStop(message: string): string {
  return message.trim().replace(/[.\s]+$/, '');
}
