import * as z from 'zod/mini';
import { id, most } from './schema/basics.ts';
import { curveSchema } from './schema/curve.ts';
import { driverSchema } from './schema/driver.ts';
import { enclosureSchema } from './schema/enclosure.ts';
import { networkSchema } from './schema/network.ts';
import { airSchema, chainSchema, listeningSchema } from './schema/scene.ts';

// The saved document, version 2. SI units, the unit in every dimensional field's name. Derived values are never saved.
// Objects are strict: a field that is not known is named, not dropped, so that a slip of the pen loses nothing.

export * from './schema/curve.ts';
export * from './schema/driver.ts';
export * from './schema/enclosure.ts';
export * from './schema/network.ts';
export * from './schema/scene.ts';
export * from './schema/wood.ts';
export { most };

const projectFields = {
  format: z.literal('conewright-project'),
  version: z.literal(2),
  name: z.string().check(z.minLength(1), z.maxLength(160)),
  notes: z.string().check(z.maxLength(20000)),
  air: airSchema,
  drivers: z.array(driverSchema).check(z.maxLength(most.drivers)),
  enclosure: enclosureSchema,
  network: networkSchema,
  chain: chainSchema,
  listening: listeningSchema,
  curves: z.array(curveSchema).check(z.maxLength(most.curves)),
};
/** A kept state: everything that shapes the sound, without curves and without kept states of its own. */
export const snapshotSchema = z.strictObject({
  id,
  name: z.string().check(z.maxLength(120)),
  air: airSchema,
  drivers: projectFields.drivers,
  enclosure: enclosureSchema,
  network: networkSchema,
  chain: chainSchema,
  listening: listeningSchema,
});
export const projectSchema = z.strictObject({
  ...projectFields,
  snapshots: z.array(snapshotSchema).check(z.maxLength(most.snapshots)),
  /** Which view the project opens with: `teach-port` puts one port's length in front as the large handle. */
  opensWith: z._default(z.enum(['workbench', 'teach-port']), 'workbench'),
});

export type Project = z.infer<typeof projectSchema>;
export type Snapshot = z.infer<typeof snapshotSchema>;
