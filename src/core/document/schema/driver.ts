import * as z from 'zod/mini';
import { finite, id, nonNegative, positive } from './basics.ts';

/** What the data sheet or the person gave; absent numbers are derived on load, never saved. */
export const driverEnteredSchema = z.partial(
  z.strictObject({
    reOhm: positive,
    leH: nonNegative,
    semiInductance: z.strictObject({ kOhmSn: positive, exponent: z.number().check(z.positive(), z.maximum(1)) }),
    fsHz: positive,
    qms: positive,
    qes: positive,
    qts: positive,
    vasM3: positive,
    sdM2: positive,
    blTm: positive,
    mmsKg: positive,
    cmsMPerN: positive,
    rmsKgPerS: positive,
    xmaxM: positive,
    ratedPowerW: positive,
    sensitivityDb2V83: finite,
    nominalOhm: positive,
  }),
);

export const driverSchema = z.strictObject({
  id,
  name: z.string().check(z.maxLength(120)),
  description: z._default(z.string().check(z.maxLength(400)), ''),
  role: z.enum(['woofer', 'mid', 'tweeter', 'full-range']),
  shape: z.enum(['cone', 'dome']),
  entered: driverEnteredSchema,
  /** Air in which the sheet's Vas holds; null means the default air. */
  sheetAir: z._default(z.nullable(z.strictObject({ densityKgPerM3: positive, soundSpeedMPerS: positive })), null),
  outerDiameterM: positive,
  depthM: nonNegative,
  displacementM3: nonNegative,
  /** How it is let into its panel; null: not known. Diameters, not radii. */
  fitting: z._default(
    z.nullable(
      z.strictObject({
        cutOutDiameterM: positive,
        recessDepthM: nonNegative,
        screwCircleM: positive,
        screwCount: z.int().check(z.minimum(0), z.maximum(16)),
        magnetDiameterM: positive,
      }),
    ),
    null,
  ),
  /** How its coil warms up; null: as is usual for its role. Time constants of coil against magnet and magnet against air. */
  heat: z._default(
    z.nullable(
      z.strictObject({
        wire: z.enum(['copper', 'aluminium']),
        coilKPerW: positive,
        coilS: positive,
        magnetKPerW: positive,
        magnetS: positive,
        limitC: positive,
      }),
    ),
    null,
  ),
  measured: z._default(
    z.nullable(
      z.strictObject({
        responseCurveId: z.nullable(id),
        impedanceCurveId: z.nullable(id),
        /** Centre of the one-octave raised-cosine blend: the table rules above it, the model below. */
        blendHz: positive,
      }),
    ),
    null,
  ),
});

export type Driver = z.infer<typeof driverSchema>;
export type DriverEntered = z.infer<typeof driverEnteredSchema>;
