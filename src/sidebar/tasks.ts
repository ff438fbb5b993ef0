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
import * as words from './words';

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
    about: words.PLAN,
    Panel: RotationPanel,
  },
  {
    id: 'happened',
    title: 'What happened',
    about: words.HAPPENED,
    Panel: HappenedPanel,
    needs: ROTATION_NAME,
  },
  {
    id: 'today',
    title: 'See today at a glance',
    about: words.TODAY,
    Panel: TodayPanel,
  },
  {
    id: 'herd',
    title: 'Keep the herd log',
    about: words.HERD,
    Panel: HerdPanel,
  },
  {
    id: 'map',
    title: 'Draw the paddocks',
    about: words.MAP,
    Panel: MapPanel,
  },
  {
    id: 'materials',
    title: 'List the fence materials',
    about: words.MATERIALS,
    Panel: MaterialsPanel,
  },
  {
    id: 'training',
    title: 'Train the pigs',
    about: words.TRAINING,
    Panel: TrainingPanel,
  },
  {
    id: 'bite',
    title: 'Check the volts',
    about: words.BITE,
    Panel: BitePanel,
  },
  {
    id: 'budget',
    title: 'Budget feed, water and ground',
    about: words.BUDGET,
    Panel: BudgetPanel,
  },
  {
    id: 'formulas',
    title: 'Work out a number',
    about: words.NUMBER,
    Panel: FormulasPanel,
  },
  {
    id: 'share',
    title: 'Give a copy away',
    about: words.COPY,
    Panel: SharePanel,
  },
];
