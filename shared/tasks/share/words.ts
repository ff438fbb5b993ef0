/** How to give a copy away. What Google's menus do is from its help and from memory; look before you share. */
export const COPY_STEPS: readonly string[] = [
  'In the original: mark it (once). The mark is how the script tells a copy from the original.',
  'File > Make a copy. Leave “Share it with the same people” and “Copy comments” unticked.',
  'In the copy: open this task again. Clear what is private, or everything, for somebody who begins anew.',
  'What you cleared stays in the copy’s version history for everyone who may edit it. So make a second copy of the cleared copy and give that one away, or share the copy for viewing only.',
  'For a link that makes a copy for whoever opens it: share it for viewing and put /copy in place of /edit… at the end of the link.',
];

export const COPIER_STEPS: readonly string[] = [
  'A copy of the file is a copy of the tool. Formulas work at once and ask for nothing. If cells show #NAME?, reload the page.',
  'On the first use of the menu Google asks the copier to allow the script. It says that the script is not verified, for it belongs to the copy and to nobody else: Advanced, then go on.',
  'It asks for two things: to see and change this one spreadsheet (to read your lists and write the tables), and to show its own page beside it (the sidebar). No other files, no mail, no internet.',
  'Whoever makes a copy owns its script: it can be read under Extensions > Apps Script. Only give and take copies among people you trust.',
  'Copies do not follow later changes of the original or of its script.',
];

export const NOT_LOOKED_AT =
  'Your own tabs, copies of our tabs, comments, notes on cells, hidden tabs and what stands beside a table are not looked at: look through them yourself. Names stay, too: of groups, paddocks, fence lines and items that you added.';
