import * as z from 'zod/mini';
import { id, MOST, most, nodes, nonNegative, positive } from './basics.ts';

const partBase = { id, nodes, note: z._default(z.string().check(z.maxLength(200)), '') };
export const partSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    ...partBase,
    kind: z.literal('resistor'),
    ohm: nonNegative,
    ratedPowerW: z._default(z.nullable(positive), null),
  }),
  z.strictObject({
    ...partBase,
    kind: z.literal('capacitor'),
    farad: z.number().check(z.minimum(1e-15), z.maximum(MOST)),
    esrOhm: nonNegative,
  }),
  z.strictObject({
    ...partBase,
    kind: z.literal('inductor'),
    henry: z.number().check(z.minimum(1e-12), z.maximum(MOST)),
    dcrOhm: nonNegative,
    /** Loss tangent of a core, 0 for an air coil: adds ωL·tanδ in series (hysteresis at small signals). */
    coreLossTangent: nonNegative,
  }),
  /** A link that can be taken off, as between bi-wire terminals; counts as 1 mΩ. */
  z.strictObject({ ...partBase, kind: z.literal('jumper') }),
  /** nodes: plus, minus. */
  z.strictObject({ ...partBase, kind: z.literal('speaker'), driverId: id }),
  /** An amplifier channel: nodes plus and return. Its settings are in `chain.amplifiers` under the same id. */
  z.strictObject({ ...partBase, kind: z.literal('amplifier') }),
]);

export const networkSchema = z.strictObject({ parts: z.array(partSchema).check(z.maxLength(most.parts)) });
