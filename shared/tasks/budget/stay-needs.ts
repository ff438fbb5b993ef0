import { feedNeeded } from '../../core/herd/feed-needed';
import { nutrientLoad } from '../../core/herd/nutrient-load';
import { shelterArea } from '../../core/herd/shelter-area';
import { waterNeeded } from '../../core/herd/water-needed';
import { weightAfterDays } from '../../core/herd/weight-after-days';
import type { BudgetStay, StayNeeds } from './budget-model';
import type { BudgetSettings } from './budget-settings';

/**
 * Feed, water, shelter and nutrients of one stay; `settings` in inside units.
 *
 * Feed over the stay as the pigs grow, by the mean head; water and shelter at the weight they leave with, by the most head;
 * nutrients at the mean of the weights in and out, by the mean head. Holds for growing pigs; refuses where the growth table ends and no gain is given.
 * Sources: those of feedNeeded, waterNeeded, shelterArea and nutrientLoad.
 */
export function stayNeeds(stay: BudgetStay, settings: BudgetSettings): StayNeeds {
  const { head, meanHead, days, startWeightKg, growthDays, dailyGainKg } = stay;
  const weightInKg = weightAfterDays(startWeightKg, growthDays, dailyGainKg);
  const weightOutKg = weightAfterDays(startWeightKg, growthDays + days, dailyGainKg);
  const meanKg = (weightInKg + weightOutKg) / 2;
  const [nitrogen = 0, phosphorus = 0, potassium = 0] = nutrientLoad(
    meanHead,
    meanKg,
    days,
    stay.areaSquareMeters,
  );
  return {
    weightInKg,
    weightOutKg,
    feedKg: feedNeeded(meanHead, weightInKg, days, dailyGainKg, settings.outdoor ?? 1),
    waterLiters: waterNeeded(head, weightOutKg, settings.mild ?? 0),
    hotWaterLiters: waterNeeded(head, weightOutKg, settings.hot ?? 0),
    shelterSquareMeters: shelterArea(head, weightOutKg, settings.shelter ?? 0),
    nitrogen,
    phosphorus,
    potassium,
  };
}
