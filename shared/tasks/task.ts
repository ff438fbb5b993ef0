import type { Book } from '../block/book';
import type { ComposedBlock } from '../block/composed-block';
import type { BlockContent } from '../block/read-block';
import type { FoundList, ListSources } from '../lists/model';
import type { Origin } from './draft-block';
import type { FarmMap } from './map/map-model';
import type { Planned } from './rotation/rotation-task';
import type { RulesForm } from './rotation/rules-form';
import type { Standing } from './standing';

/** One kind of block that the grower can have written into the sheet, whoever asks for it: the page or a program. */
export interface Task<Plan = unknown, View extends object = object> {
  /** Named range, such as SOUNDER_MAP. */
  readonly name: string;
  /** "the map table": for the button and the messages. */
  readonly what: string;
  /** Of a new tab. */
  readonly tabName: string;
  /** What the sheet and the answers come to: the plan, or what is still missing; and what a page shows of it. */
  read(book: Book, answers: Answers): Form<Plan> & View;
  /**
   * What takes long to work out, as a further answer to a form without a plan. A page has it worked out in the
   * background and gives the answer itself.
   */
  solve?(form: Form<Plan> & View): Answers;
  compose(plan: Plan, corner: Origin): ComposedBlock;
  /** The next useful task once this is written, as a sentence. */
  readonly next?: string;
  /** It has a tab of its own and no other place. */
  readonly ownTab?: true;
}

/**
 * What a person typed or chose, by the label of the field as the page shows it: the text of a field or of the chosen
 * option, for what repeats (fence lines) one for each, and what the page has read or worked out: a list, a map, a plan.
 */
export type Answers = Readonly<Record<string, Answer | undefined>>;
export type Answer =
  | string
  | TextAnswers
  | readonly TextAnswers[]
  | FoundList
  | FarmMap
  | RulesForm
  | Planned;
export type TextAnswers = Readonly<Record<string, string>>;

export interface Form<Plan = unknown> {
  /** Absent while something is missing or wrong. */
  readonly plan: Plan | undefined;
  /** What is missing or wrong, a sentence each. */
  readonly questions: readonly string[];
  /** Those of them that the sheet, not the form, is to blame for. */
  readonly sheetProblems: readonly string[];
  /** The block that stands, which is written over. */
  readonly standing: Standing | undefined;
  /** Why the block that stands is left as a record and the new one gets a place of its own. */
  readonly record: string | undefined;
  /** Written before it, where that can be: the record as it is to stay. */
  readonly first?: Task;
  /** What writing it anew changes, in sentences, and what to beware of. */
  readonly changes?: readonly string[];
  readonly warnings?: readonly string[];
  /** By label, what the sheet says: an answer given before gives way where this changes. */
  readonly inSheet: Readonly<Record<string, unknown>>;
  /** Lists and choices as they were taken: the grower who presses the button means these. */
  readonly taken: Answers;
  /** Labels of all that was asked. */
  readonly labels: readonly string[];
  /** What else the plan rests on: where it says something else by now, nothing is written. */
  readonly sources: Sources;
}

export interface Sources extends ListSources {
  readonly rotation?: BlockContent | undefined;
}
