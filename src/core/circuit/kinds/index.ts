export {
  CAPACITOR_KINDS,
  CAPACITOR_LEADS_OHM,
  type CapacitorKind,
  type CapacitorKindName,
  type LossPoint,
} from './capacitorKinds.ts';
export { capacitorSeriesOhm, dielectricOhm, type SeriesResistance } from './capacitorLoss.ts';
export { deratedPowerW, resistorTemperatureC } from './deratedPower.ts';
export {
  CROSSOVER_AIR_C,
  RATING_OVER_POWER,
  RESISTOR_KINDS,
  type ResistorKind,
  type ResistorKindName,
} from './resistorKinds.ts';
