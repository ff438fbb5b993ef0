/**
 * Ground that feeds stock living on its forage.
 *
 *   area = demand × days ÷ (availableForage × use)
 *
 * demand is mass a day for the whole group, availableForage mass per area, use the part of it eaten.
 * Source: pennStateTable, all of whose cells it reproduces; cornellWorksheet.
 */
export function grazingArea(demand: number, days: number, availableForage: number, use: number): number {
  return (demand * days) / (availableForage * use);
}
