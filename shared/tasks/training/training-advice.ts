/** Words that stand in the sheet and in the sidebar, each with where it comes from. */

export const MINIMUM_DAYS_NOTE =
  'Until each pig has met the wire and backed off, watched on at least 3 days; commonly one to two weeks (common practice, no source).';

export interface Advice {
  readonly text: string;
  /** With its certainty. */
  readonly source: string;
}

/** What to do if a pig gets out. */
export const ESCAPE_STEPS: readonly Advice[] = [
  {
    text: 'Stay calm and quiet; send dogs and onlookers away. One pig out wants back to the others: leave those in peace where they are.',
    source: 'common practice, no source',
  },
  {
    text: 'Near a road, put a person there to warn traffic before anything else, and call the police or road authority if pigs may reach it. Tell neighbours.',
    source: 'judgement; your local rules on loose stock decide',
  },
  {
    text: 'Do not corner a big pig, a sow with young or a boar, and never alone: pigs bite and knock people down. Work with a board in front of you.',
    source: 'common practice, no source',
  },
  {
    text: 'Never herd it into the electric fence. Switch the energizer off, open the way in wide and lead the pig with a bucket of feed.',
    source:
      'never herd stock into the fence, leave a way out: published (Univ. of Maine Extension; D. Pratt, UC Cooperative Extension); the bucket: common practice, no source',
  },
  {
    text: 'Trained pigs may refuse to cross a line where a wire was. Use a gap of panels, not the place of the wire.',
    source: 'farmers’ reports, no source',
  },
  {
    text: 'Give it water and shade when it is back; a chased pig overheats fast.',
    source: 'common practice, no source',
  },
  {
    text: 'Find out why: measure the volts, walk the line, look at the log. A pig that goes through again and again is not trained: back to the pen, or sell it.',
    source: 'cull persistent ones: published (Univ. of Maine Extension)',
  },
];

export const WATCH_STEPS: readonly Advice[] = [
  {
    text: 'Watch the first hour. Untrained pigs lunge forward when the wire bites: the panels behind it hold them.',
    source: 'published (The Country Smallholder, UK)',
  },
  {
    text: 'Most animals do not try a third time.',
    source: 'published (Univ. of Maine Extension; D. Pratt, UC Cooperative Extension)',
  },
  {
    text: 'The check: a person watches each pig come to the live wire at feeding, see it and turn back by itself.',
    source: 'judgement',
  },
  {
    text: 'No electric fence holds every pig: keep a second fence between pigs and roads.',
    source:
      'published trials of electric fence against feral pigs cut crossings but did not end them (Reidy and others 2008; Hone and Atkinson 1983); the second fence: judgement',
  },
];
