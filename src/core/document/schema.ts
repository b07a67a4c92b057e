import * as z from 'zod/mini';

// The saved document, version 1. SI units, the unit in every dimensional field's name. Derived values are never saved.
// Objects are strict: a field that is not known is named, not dropped, so that a slip of the pen loses nothing.

// Compiled validators would need `eval`, which the page's content policy forbids.
z.config({ jitless: true });

/** Far beyond any loudspeaker in SI units, and small enough that products of a few such values stay finite. */
const MOST = 1e9;
const finite = z.number().check(z.minimum(-MOST), z.maximum(MOST));
const positive = z.number().check(z.positive(), z.maximum(MOST));
const nonNegative = z.number().check(z.nonnegative(), z.maximum(MOST));
/** How many of each a document holds. */
export const most = {
  parts: 200,
  drivers: 24,
  chambers: 12,
  ports: 12,
  mounts: 12,
  amplifiers: 6,
  curves: 40,
  snapshots: 2,
} as const;

const id = z.string().check(z.minLength(1), z.maxLength(60));
const nodeName = z.string().check(z.regex(/^[A-Za-z0-9_.+-]{1,32}$/));
const nodes = z.readonly(z.tuple([nodeName, nodeName]));
const lossQ = z.strictObject({ q: positive, atHz: positive });

/** Ranges in which people build and listen; the formulas for speed of sound and density stay sensible in them. */
export const airSchema = z.strictObject({
  temperatureC: z.number().check(z.minimum(0), z.maximum(40)),
  pressurePa: z.number().check(z.minimum(60_000), z.maximum(110_000)),
  humidityFraction: z.number().check(z.minimum(0), z.maximum(1)),
});

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

/** `geometry`: the space between two heights (measured from the outer bottom) across the inner width, to `depthM` inside (null: full). */
export const chamberVolumeSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('stated'), grossM3: positive }),
  z.strictObject({ kind: z.literal('geometry'), bottomM: nonNegative, topM: positive, depthM: z.nullable(positive) }),
]);

export const chamberSchema = z.strictObject({
  id,
  name: z.string().check(z.maxLength(80)),
  volume: chamberVolumeSchema,
  bracesM3: nonNegative,
  /** Apparent over net volume that the filling gives, as the person states it: 1 empty, about 1.35 at most. */
  fillGain: positive,
  leak: z.nullable(lossQ),
  absorption: z.nullable(lossQ),
});

const portEnd = z.enum(['free', 'flanged', 'on-wall']);
export const portSchema = z.strictObject({
  id,
  chamberId: id,
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
  face: z.enum(['front', 'back']),
  xM: finite,
  yM: finite,
});

/** Where the speaker part `partId` of the network sits. chamberId null: nothing behind it but its own moving parts. */
export const mountSchema = z.strictObject({
  partId: id,
  chamberId: z.nullable(id),
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
});

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

export const chainSchema = z.strictObject({
  /** Drive at every amplifier channel, volts rms. */
  driveV: positive,
  amplifiers: z
    .array(
      z.strictObject({ id, outputResistanceOhm: nonNegative, ratedMinimumLoadOhm: positive, cableOhm: nonNegative }),
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

const projectFields = {
  format: z.literal('conewright-project'),
  version: z.literal(1),
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
export type Air = z.infer<typeof airSchema>;
export type Driver = z.infer<typeof driverSchema>;
export type DriverEntered = z.infer<typeof driverEnteredSchema>;
export type Enclosure = z.infer<typeof enclosureSchema>;
export type Chamber = z.infer<typeof chamberSchema>;
export type Port = z.infer<typeof portSchema>;
export type Mount = z.infer<typeof mountSchema>;
export type Chain = z.infer<typeof chainSchema>;
export type Listening = z.infer<typeof listeningSchema>;
export type Curve = z.infer<typeof curveSchema>;
export type Snapshot = z.infer<typeof snapshotSchema>;
