/** What a data sheet or a person gave of a driver; anything may be missing. SI, moving mass with its air load. */
export interface DriverEntered {
  readonly reOhm?: number | undefined;
  readonly leH?: number | undefined;
  readonly semiInductance?: { readonly kOhmSn: number; readonly exponent: number } | undefined;
  readonly fsHz?: number | undefined;
  readonly qms?: number | undefined;
  readonly qes?: number | undefined;
  readonly qts?: number | undefined;
  readonly vasM3?: number | undefined;
  readonly sdM2?: number | undefined;
  readonly blTm?: number | undefined;
  readonly mmsKg?: number | undefined;
  readonly cmsMPerN?: number | undefined;
  readonly rmsKgPerS?: number | undefined;
  readonly xmaxM?: number | undefined;
  /** dB re 20 µPa at 1 m for 2.83 V in half space. */
  readonly sensitivityDb2V83?: number | undefined;
}

/** The numbers that hang together, from the most to the least trusted: a later one yields to those before it. */
export const LINKED_FIELDS = [
  'reOhm',
  'sdM2',
  'fsHz',
  'qes',
  'qms',
  'qts',
  'mmsKg',
  'blTm',
  'cmsMPerN',
  'vasM3',
  'rmsKgPerS',
] as const;
export type LinkedField = (typeof LINKED_FIELDS)[number];

/** How the trade writes them. */
export const FIELD_SYMBOLS: Readonly<Record<LinkedField, string>> = {
  reOhm: 'Re',
  sdM2: 'Sd',
  fsHz: 'fs',
  qes: 'Qes',
  qms: 'Qms',
  qts: 'Qts',
  mmsKg: 'Mms',
  blTm: 'Bl',
  cmsMPerN: 'Cms',
  vasM3: 'Vas',
  rmsKgPerS: 'Rms',
};
