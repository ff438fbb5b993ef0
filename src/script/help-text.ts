/** What the menu's help says; the rest stands in the sidebar and in the README. */
export const HELP_TEXT = [
  'Type a function into a cell, for example =FENCE_LENGTH(B5;C5): its help opens as you type.',
  'Open the sidebar to work out a number or to plan the moves; it writes only into its own tables.',
  'In the moves table, type the real day into "Moved in": the rest of the season shifts at once.',
  'If a cell shows #NAME? right after you copied the file, reload the page.',
  'Planning figures only. The energizer’s manual, local codes and licensed people decide; test the fence with a meter and look at your pigs every day.',
].join('\n\n');
