import * as z from 'zod/mini';
import { id, most, nonNegative, positive } from './basics.ts';

/** Ranges in which people build and listen; the formulas for speed of sound and density stay sensible in them. */
export const airSchema = z.strictObject({
  temperatureC: z.number().check(z.minimum(0), z.maximum(40)),
  pressurePa: z.number().check(z.minimum(60_000), z.maximum(110_000)),
  humidityFraction: z.number().check(z.minimum(0), z.maximum(1)),
});

export const chainSchema = z.strictObject({
  /** Drive at every amplifier channel, volts rms. */
  driveV: positive,
  amplifiers: z
    .array(
      z.strictObject({
        id,
        outputResistanceOhm: nonNegative,
        ratedMinimumLoadOhm: positive,
        cableOhm: nonNegative,
        /** Active high-pass before the amplifier; null: none. */
        highPass: z._default(
          z.nullable(
            z.strictObject({
              shape: z.enum(['butterworth', 'linkwitz-riley']),
              order: z.int().check(z.minimum(1), z.maximum(4)),
              cornerHz: positive,
            }),
          ),
          null,
        ),
        /** What it can give at most, peak; null: not known. */
        peakVoltageV: z._default(z.nullable(positive), null),
        peakCurrentA: z._default(z.nullable(positive), null),
      }),
    )
    .check(z.maxLength(most.amplifiers)),
});

export const listeningSchema = z.strictObject({
  /** From the front plane along z. */
  distanceM: z.number().check(z.positive(), z.maximum(100)),
  /** Above the floor. */
  heightM: z.number().check(z.minimum(-10), z.maximum(100)),
  horizontalDeg: z.number().check(z.minimum(-180), z.maximum(180)),
  verticalDeg: z.number().check(z.minimum(-90), z.maximum(90)),
  standHeightM: nonNegative,
  radiation: z.enum(['baffle-step', 'half-space', 'full-space']),
});

export type Air = z.infer<typeof airSchema>;
export type Chain = z.infer<typeof chainSchema>;
export type Listening = z.infer<typeof listeningSchema>;
