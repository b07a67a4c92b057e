/**
 * What a field holds. Inside, each kind has one unit: SI, save for `angle` (degrees), `temperature` (°C) and `level` (dB),
 * which the document stores so.
 */
export type QuantityKind =
  | 'length'
  | 'area'
  | 'volume'
  | 'resistance'
  | 'capacitance'
  | 'inductance'
  | 'frequency'
  | 'mass'
  | 'voltage'
  | 'current'
  | 'power'
  | 'angle'
  | 'temperature'
  | 'thermal-resistance'
  | 'pressure'
  | 'ratio'
  | 'compliance'
  | 'force-factor'
  | 'mechanical-resistance'
  | 'flow-resistivity'
  | 'level'
  | 'time'
  | 'speed'
  | 'plain';

export type UnitSystem = 'metric' | 'imperial';
