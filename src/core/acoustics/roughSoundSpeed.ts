/** Speed at 0 °C in the rules of thumb, m/s. */
const AT_ZERO_C = 331.3;

/**
 * The straight rule of thumb 331.3 + 0.606 t, m/s, t in °C. Within 0.1 % of the root rule from 0 to 30 °C; knows no humidity.
 * Source: textbook rule, common practice.
 */
export const roughSoundSpeed = (temperatureC: number): number => AT_ZERO_C + 0.606 * temperatureC;

/** The root rule 331.3 √(1 + t/273.15), m/s, t in °C: an ideal gas scaled to 0 °C. Source: textbook rule, common practice. */
export const rootSoundSpeed = (temperatureC: number): number => AT_ZERO_C * Math.sqrt(1 + temperatureC / 273.15);
