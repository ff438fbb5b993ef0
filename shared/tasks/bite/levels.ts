import type { Certainty } from '../../sources';

/** A level of volts that somebody published, or that is only remembered. */
export interface VoltLevel {
  readonly stock: string;
  readonly volts: string;
  readonly meaning: 'on the fence' | 'delivered to the animal';
  readonly certainty: Certainty;
  readonly source: string;
}

/** No official level for pigs alone was found (LOOKED_FOR): published ones are for all stock or other stock. */
export const VOLT_LEVELS: readonly VoltLevel[] = [
  {
    stock: 'Pigs, trained',
    volts: '2,000 at every point, better 3,000; difficult stock 4,000 to 5,000',
    meaning: 'on the fence',
    certainty: 'published',
    source: 'BUL (farm accident prevention), Bioland, Herkert 2025 (least by German law); all stock',
  },
  {
    stock: 'Pigs in training',
    volts: '4,000 to 5,000',
    meaning: 'on the fence',
    certainty: 'from memory',
    source: 'no source found',
  },
  {
    stock: 'Cattle',
    volts: '3,000',
    meaning: 'on the fence',
    certainty: 'published',
    source: 'A. Kuipers, Alberta Farmer Express',
  },
  {
    stock: 'Sheep',
    volts: '4,500',
    meaning: 'on the fence',
    certainty: 'published',
    source: 'A. Kuipers, Alberta Farmer Express',
  },
  {
    stock: 'Cattle and horses',
    volts: '1,000',
    meaning: 'delivered to the animal',
    certainty: 'published',
    source: 'USDA-NRCS Iowa, job sheet 382, Fence: Electric',
  },
  {
    stock: 'Sheep',
    volts: '2,000',
    meaning: 'delivered to the animal',
    certainty: 'published',
    source: 'USDA-NRCS Iowa, job sheet 382, Fence: Electric',
  },
];
