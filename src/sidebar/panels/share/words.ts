/** The sentences of the page on giving a copy away. */
// What is private here
export const NOTHING_PRIVATE = 'Nothing private was found in the tables that are looked at.';
export const ofEarlierSeasons = (tabs: string): string =>
  `${tabs}: tables of an earlier season, or copies, are not looked at and not cleared. Clear them yourself, or delete these tabs in the copy.`;
export const NOTHING_LEFT = 'Nothing is left on its tabs.';
export const filledTabs = (tabs: string): string =>
  `Your own tabs stay, with what is left on them: ${tabs}. Look through them.`;
export const notLookedAt = (tabs: string): string => `Tabs not looked at: ${tabs}.`;
export const COPIER_TITLE = 'What whoever copies it must allow, and why';
export const FROM_MEMORY = 'What Google’s menus say is from its help and from memory; it may have changed.';

// Clearing a copy
export const MARKED = 'This file is marked as the original.';
export const MARK_FIRST =
  'Mark it as the original first: only a file that is known as a copy is cleared. The mark is a short text made of the file’s number; the number itself is not written.';
export const EVERYTHING = 'Everything: a blank copy for somebody else';
export const EDITORS_FIND =
  'Editors still find it in this copy’s version history (File > Version history brings it back): make a second copy and give that away, or share this one for viewing only.';
export const CLEARED = 'Cleared in this copy.';
export const goes = (what: string): string =>
  `Goes: ${what}. Headings of the lists, your other tabs and your formulas stay.`;
export const typeName = (file: string): string => `To be sure, type the name of this file: ${file}`;
export const recordedHere = (file: string, moves: string, last: string): string =>
  `${file} has ${moves} recorded, the last on ${last}. If you work in this file, clear nothing: mark it as the original, below.`;
export const WORK_HERE = 'I work in this file: mark it as the original';
export const ORIGINAL_KEEPS = 'The original keeps everything.';
