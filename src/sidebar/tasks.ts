/** What the page can do, in the grower's words. A new task is one folder under panels/ and one line here. */
import type { ComponentType } from 'preact';
import { ROTATION_NAME } from '../../shared/block/own-words';
import { BitePanel } from './panels/bite/bite-panel';
import { BudgetPanel } from './panels/budget/budget-panel';
import { FormulasPanel } from './panels/formulas/formulas-panel';
import { HappenedPanel } from './panels/happened/happened-panel';
import { HerdPanel } from './panels/herd/herd-panel';
import { MapPanel } from './panels/map/map-panel';
import { MaterialsPanel } from './panels/materials/materials-panel';
import { RotationPanel } from './panels/rotation/rotation-panel';
import { SharePanel } from './panels/share/share-panel';
import { TodayPanel } from './panels/today/today-panel';
import { TrainingPanel } from './panels/training/training-panel';

export interface Task {
  readonly id: string;
  readonly title: string;
  /** One sentence under the title. */
  readonly about: string;
  readonly Panel: ComponentType;
  /** Our block without which it has nothing to do, and with which it is what most people come for. */
  readonly needs?: string;
}

export const TASKS: readonly Task[] = [
  {
    id: 'rotation',
    title: 'Plan the moves',
    about: 'A dated table of which pigs go to which paddock when, from your own lists.',
    Panel: RotationPanel,
  },
  {
    id: 'happened',
    title: 'What happened',
    about: 'A group has moved, is late, was sold; a paddock is shut: recorded, and what it does to the plan.',
    Panel: HappenedPanel,
    needs: ROTATION_NAME,
  },
  {
    id: 'today',
    title: 'See today at a glance',
    about:
      'A page for the phone: where each group stands, what is next, and a box to tick when it has moved.',
    Panel: TodayPanel,
  },
  {
    id: 'herd',
    title: 'Keep the herd log',
    about: 'How many there are from which day on, and what they weigh: sold, died, joined, weighed.',
    Panel: HerdPanel,
  },
  {
    id: 'map',
    title: 'Draw the paddocks',
    about: 'Areas, fence and posts from corners on a map; a drawing to print.',
    Panel: MapPanel,
  },
  {
    id: 'materials',
    title: 'List the fence materials',
    about: 'Posts, wire, energizer and all the rest: what you need, what to buy, what it costs.',
    Panel: MaterialsPanel,
  },
  {
    id: 'training',
    title: 'Train the pigs',
    about: 'A pen with a live wire inside, a log that says who is ready, and what to do when one gets out.',
    Panel: TrainingPanel,
  },
  {
    id: 'bite',
    title: 'Check the volts',
    about: 'Will it bite at the far end, in weeds, with a pig on it; and a log of your fence walks.',
    Panel: BitePanel,
  },
  {
    id: 'budget',
    title: 'Budget feed, water and ground',
    about: 'Feed, water, shelter and nutrients for the season and stay by stay.',
    Panel: BudgetPanel,
  },
  {
    id: 'formulas',
    title: 'Work out a number',
    about: 'Fence, posts, feed, water, rest and more; put the formula into your sheet.',
    Panel: FormulasPanel,
  },
  {
    id: 'share',
    title: 'Give a copy away',
    about: 'What is private in this file, and how to clear it in a copy before you share it.',
    Panel: SharePanel,
  },
];
