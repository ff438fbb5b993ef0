/**
 * Litres of water per kg of feed by air temperature. The upper ends of mount1971 (published): 2.7 at 7 to 22 °C
 * and 5.0 at 30 to 33 °C. The straight line between 22 and 33 °C is judgement.
 */
export const COOL_LITERS_PER_KG = 2.7;
export const COOL_UP_TO_CELSIUS = 22;
export const HOT_LITERS_PER_KG = 5;
export const HOT_FROM_CELSIUS = 33;

/**
 * Water to have there for each litre drunk. Judgement, from metered use: 60 to 117 mL a kg of pig a day, drunk and
 * spilled (little2023).
 */
export const SPILL_FACTOR = 1.25;
