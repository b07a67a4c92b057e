import * as z from 'zod/mini';
import { finite, id, lossQ, most, nonNegative, positive } from './basics.ts';
import { plainWood } from './plainWood.ts';
import { woodSchema } from './wood.ts';

/** `geometry`: the space between two heights (measured from the outer bottom) across the inner width, to `depthM` inside (null: full). */
export const chamberVolumeSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('stated'), grossM3: positive }),
  z.strictObject({ kind: z.literal('geometry'), bottomM: nonNegative, topM: positive, depthM: z.nullable(positive) }),
]);

/** Fibre in a chamber or a line: how much by weight per filled volume, and where. */
export const fillingSchema = z.strictObject({
  material: z.enum(['polyester-wadding', 'long-fibre-wool', 'glass-wool', 'open-cell-foam']),
  densityKgPerM3: positive,
  /** Flow resistivity where it is known, Pa·s/m²; null: estimated from material and density. */
  flowResistivityPaSPerM2: z.nullable(positive),
  /** `stuffed`: a share of the volume; `lined`: a layer of this thickness on the walls. */
  placing: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('stuffed'), share: z.number().check(z.positive(), z.maximum(1)) }),
    z.strictObject({ kind: z.literal('lined'), thicknessM: positive }),
  ]),
});

export const chamberSchema = z.strictObject({
  id,
  name: z.string().check(z.maxLength(80)),
  volume: chamberVolumeSchema,
  bracesM3: nonNegative,
  /** Apparent over net volume that the filling gives, as the person states it: 1 empty; 1.4 in theory, seldom above 1.35 (both from memory). */
  fillGain: positive,
  leak: z.nullable(lossQ),
  absorption: z.nullable(lossQ),
  /** What is put in, from which gain and damping are computed; null: `fillGain` and `absorption` as stated. */
  filling: z._default(z.nullable(fillingSchema), null),
});

const portEnd = z.enum(['free', 'flanged', 'on-wall']);
export const portSchema = z.strictObject({
  id,
  chamberId: id,
  /** The chamber at its other end; null: outside. */
  toChamberId: z._default(z.nullable(id), null),
  shape: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('round'), diameterM: positive }),
    z.strictObject({ kind: z.literal('slot'), widthM: positive, heightM: positive }),
  ]),
  /** Equal ports of this kind; each is placed at x, y in turn for the drawing, acoustically they share the centre. */
  count: z.int().check(z.minimum(1), z.maximum(8)),
  lengthM: nonNegative,
  innerEnd: portEnd,
  outerEnd: portEnd,
  /** Wall thickness of the tube or of the slot's own inner panel, for the space it takes. */
  wallM: nonNegative,
  loss: z.nullable(lossQ),
  /** Radius of the rounding at each end, 0 for a sharp edge; it lies within the length. */
  innerFlareM: z._default(nonNegative, 0),
  outerFlareM: z._default(nonNegative, 0),
  bends: z._default(z.int().check(z.minimum(0), z.maximum(4)), 0),
  /** Flow resistivity of a filling in the bore, Pa·s/m²; 0: none. */
  stuffingPaSPerM2: z._default(nonNegative, 0),
  /** Whether standing waves in the bore are computed; without them it is a mass. */
  resonances: z._default(z.boolean(), false),
  face: z.enum(['front', 'back']),
  xM: finite,
  yM: finite,
});

/** Equal passive radiators; mass and resonance as the sheet gives them, without what is added. */
export const passiveRadiatorSchema = z.strictObject({
  id,
  name: z.string().check(z.maxLength(80)),
  chamberId: id,
  count: z.int().check(z.minimum(1), z.maximum(8)),
  sdM2: positive,
  mmsKg: positive,
  fsHz: positive,
  qms: positive,
  addedMassKg: nonNegative,
  xmaxM: z.nullable(positive),
  outerDiameterM: positive,
  face: z.enum(['front', 'back']),
  xM: finite,
  yM: finite,
});

/** A long duct with losses from a chamber: straight or tapered from its first area to its last, empty or filled. */
export const lineSchema = z.strictObject({
  id,
  name: z.string().check(z.maxLength(80)),
  chamberId: id,
  lengthM: positive,
  startAreaM2: positive,
  endAreaM2: positive,
  filling: z.nullable(fillingSchema),
  end: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('closed') }),
    z.strictObject({ kind: z.literal('open'), face: z.enum(['front', 'back']), xM: finite, yM: finite }),
    z.strictObject({ kind: z.literal('chamber'), chamberId: id }),
  ]),
});

/** Where the speaker part `partId` of the network sits. chamberId null: nothing behind it but its own moving parts. */
export const mountSchema = z.strictObject({
  partId: id,
  chamberId: z.nullable(id),
  /** The chamber before its cone; null: the air outside. */
  frontChamberId: z._default(z.nullable(id), null),
  /** Without a chamber behind it: its back is closed (a dome, a sealed mid), or in the open on a bare baffle. */
  back: z._default(z.enum(['closed', 'open']), 'closed'),
  xM: finite,
  yM: finite,
  /** Acoustic centre along z; behind the front plane is negative. */
  acousticCentreZM: finite,
});

export const enclosureSchema = z.strictObject({
  widthM: positive,
  heightM: positive,
  depthM: positive,
  panelM: positive,
  chambers: z.array(chamberSchema).check(z.maxLength(most.chambers)),
  ports: z.array(portSchema).check(z.maxLength(most.ports)),
  mounts: z.array(mountSchema).check(z.maxLength(most.mounts)),
  passiveRadiators: z._default(z.array(passiveRadiatorSchema).check(z.maxLength(most.passiveRadiators)), []),
  lines: z._default(z.array(lineSchema).check(z.maxLength(most.lines)), []),
  wood: z._default(woodSchema, plainWood),
});

export type Enclosure = z.infer<typeof enclosureSchema>;
export type Chamber = z.infer<typeof chamberSchema>;
export type Port = z.infer<typeof portSchema>;
export type PassiveRadiator = z.infer<typeof passiveRadiatorSchema>;
export type Line = z.infer<typeof lineSchema>;
export type Mount = z.infer<typeof mountSchema>;
export type Filling = z.infer<typeof fillingSchema>;
