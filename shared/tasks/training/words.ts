/** The sentences of the training pen, of its log and of a pig that is out; advice with where it comes from. */
import { ELECTRIC_CAUTION } from '../words';

export const MINIMUM_DAYS_NOTE =
  'Until each pig has met the wire and backed off, watched on at least 3 days; commonly one to two weeks (common practice, no source).';

const SECOND_FENCE = 'No electric fence holds every pig: keep a second fence between pigs and roads.';

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
    text: SECOND_FENCE,
    source:
      'published trials of electric fence against feral pigs cut crossings but did not end them (Reidy and others 2008; Hone and Atkinson 1983); the second fence: judgement',
  },
];

// Beside the settings and figures of the pen
export const HEIGHTS_NOTE =
  'Lowest first, by STRAND_HEIGHTS; its certainty stands there. In the pen as on the fence they go to: judgement.';
export const WEIGHT_NOTE = 'On the day they go in; the wires hang by it.';
export const PANEL_NOTE = 'Rigid panels outside the wire. Common practice, no source.';
export const POST_GAP_NOTE = 'Three gaps to a panel. Common practice, no source.';
export const FLOOR_NOTE =
  'Judgement: about twice the floor on which a 250 lb (113 kg) pig lies flat. More in hot weather.';
export const LIST_FOLLOWS = 'Change a setting here and the list follows.';

// Look out: the pen
export const PEN_HEAD_CAUTION = 'Look out: panels outside, wire inside.';
export const PEN_CAUTIONS: readonly string[] = [
  'Panels outside, live wire inside, so that the pigs see the wire and cannot get out: published (Defra Pig Welfare Code PB7950).',
  'Never drive pigs into the wire. Leave them room to step back, and watch the first hour.',
  ELECTRIC_CAUTION,
  'Shade, shelter, feed and water are not in this list. Heat kills pigs: keep water there at all times.',
];
export const POST_SIDES =
  'Corner posts stand inside the panels, posts along the sides outside, so that the pigs’ push goes into the posts. Common practice, no source.';

// The log
export const TYPE_DAYS =
  'One row a pig or batch. Type days as dates. A seller’s word is written down and changes nothing.';
export const LET_IT_DECIDE =
  'For the rotation: press “Let the log decide when they may go out” in the sidebar. While it says “not ready”, no plan.';
export const LOG_HEAD_CAUTIONS: readonly string[] = [
  'Turn out only what backed off a live wire.',
  'Keep a second fence between pigs and roads.',
];
export const LOG_CAUTION = `Turn out only what a person has seen back off from a live wire. ${SECOND_FENCE}`;
// Beside a group that is planned to go out
export const NOT_READY_BY_LOG = 'Training log: not ready';
export const DAYS_TO_WAIT = 'Training log: days to wait: ';
export const plannedUntrained = (group: string, says: string): string =>
  `${group}: ${says}. The plan does not wait for that. ${LOG_CAUTION}`;

export const stays = (cell: string, typed: string, name: string): string =>
  `${cell} (${typed}) stays for ${name}: clear it to let the log decide.`;
export const notInLog = (names: string): string => `Not in the log, so nothing is put in: ${names}.`;
export const columnMade = (heading: string, cell: string): string =>
  `The list has no such column: “${heading}” is put into ${cell}.`;

// The next useful task
export const VOLTS_NEXT = '“Check the volts” of the wire in the pen.';
