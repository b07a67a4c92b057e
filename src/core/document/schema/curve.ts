import * as z from 'zod/mini';
import { finite, id, positive } from './basics.ts';

export const curveSchema = z.strictObject({
  id,
  name: z.string().check(z.maxLength(160)),
  belongsTo: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('driver'), driverId: id }),
    z.strictObject({ kind: z.literal('speaker'), channel: z.enum(['left', 'right']) }),
  ]),
  quantity: z.enum(['response', 'impedance']),
  /** Hz, ascending, all above 0. */
  frequenciesHz: z.array(positive).check(z.minLength(2), z.maxLength(20000)),
  /** dB re 20 µPa for a response, ohm for an impedance. */
  magnitudes: z.array(finite),
  phasesDeg: z.nullable(z.array(finite)),
  taken: z.strictObject({
    baffle: z.enum(['own', 'infinite']),
    voltageV: positive,
    distanceM: positive,
  }),
  sourceName: z.string().check(z.maxLength(200)),
});

export type Curve = z.infer<typeof curveSchema>;
