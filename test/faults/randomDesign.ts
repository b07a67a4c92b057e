import type { Part } from '../../src/core/circuit/part.ts';
import type { RandomStream } from '../../src/core/math/randomStream.ts';
import type {
  DriverParameters,
  ModelChamber,
  ModelPort,
  ModelSpeaker,
  SpeakerModel,
} from '../../src/core/speaker/model.ts';

const AIR = { densityKgPerM3: 1.2041, soundSpeedMPerS: 343.2 };

/** Draws from a stream. */
const between = (random: RandomStream, low: number, high: number): number => low + (high - low) * random.uniform();
const spread = (random: RandomStream, low: number, high: number): number =>
  Math.exp(between(random, Math.log(low), Math.log(high)));
const chance = (random: RandomStream, probability: number): boolean => random.uniform() < probability;
const oneOf = <T>(random: RandomStream, items: readonly T[]): T => items[Math.floor(random.uniform() * items.length)]!;
const rounded = (value: number): number => Number(value.toPrecision(2));

type Range = readonly [number, number];

const RANGES: Readonly<
  Record<'woofer' | 'mid' | 'tweeter', Readonly<Record<'fsHz' | 'sdM2' | 'massPerArea' | 'leH' | 'qms', Range>>>
> = {
  woofer: { fsHz: [26, 60], sdM2: [0.008, 0.033], massPerArea: [1.1, 2], leH: [2e-4, 8e-4], qms: [3, 8] },
  mid: { fsHz: [55, 120], sdM2: [0.0045, 0.01], massPerArea: [0.8, 1.3], leH: [8e-5, 2.5e-4], qms: [2.5, 6] },
  tweeter: { fsHz: [500, 1300], sdM2: [6e-4, 9e-4], massPerArea: [0.38, 0.55], leH: [1e-5, 5e-5], qms: [1.5, 4] },
};

function driver(random: RandomStream, role: 'woofer' | 'mid' | 'tweeter'): DriverParameters {
  const of = RANGES[role];
  const reOhm = between(random, 3.2, 6.6);
  const omega = 2 * Math.PI * spread(random, ...of.fsHz);
  const sdM2 = spread(random, ...of.sdM2);
  const mmsKg = sdM2 * spread(random, ...of.massPerArea);
  const qes = role === 'tweeter' ? between(random, 0.6, 1.4) : between(random, 0.3, 0.6);
  return {
    reOhm,
    leH: spread(random, ...of.leH),
    semiInductance:
      role === 'tweeter' || chance(random, 0.5)
        ? null
        : { kOhmSn: spread(random, 0.004, 0.02), exponent: between(random, 0.55, 0.7) },
    blTm: Math.sqrt((omega * mmsKg * reOhm) / qes),
    mmsKg,
    cmsMPerN: 1 / (omega ** 2 * mmsKg),
    rmsKgPerS: (omega * mmsKg) / spread(random, ...of.qms),
    sdM2,
  };
}

/** A low-pass, band-pass or high-pass ladder from `from` to the node `to`, and what lies across the driver. */
interface Ladder {
  readonly parts: Part[];
  readonly count: Record<'R' | 'L' | 'C', number>;
}

function adder({ parts, count }: Ladder) {
  const name = (letter: 'R' | 'L' | 'C'): string => `${letter}${++count[letter]}`;
  return {
    resistor: (a: string, b: string, ohm: number) =>
      parts.push({ kind: 'resistor', id: name('R'), nodes: [a, b], note: '', ohm: rounded(ohm), ratedPowerW: null }),
    capacitor: (a: string, b: string, farad: number) =>
      parts.push({ kind: 'capacitor', id: name('C'), nodes: [a, b], note: '', farad: rounded(farad), esrOhm: 0.04 }),
    coil: (a: string, b: string, henry: number) =>
      parts.push({
        kind: 'inductor',
        id: name('L'),
        nodes: [a, b],
        note: '',
        henry: rounded(henry),
        dcrOhm: rounded(0.05 + 220 * henry),
        coreLossTangent: 0,
      }),
  };
}

/** A speaker with one to three ways, sealed or vented, of textbook sections with values strewn about them; invented throughout. */
export function randomDesign(random: RandomStream): SpeakerModel {
  const ways = oneOf(random, [1, 2, 2, 2, 3, 3]);
  const ladder: Ladder = { parts: [], count: { R: 0, L: 0, C: 0 } };
  const add = adder(ladder);
  const parts = ladder.parts;
  parts.push({ kind: 'amplifier', id: 'V1', nodes: ['in', '0'], note: '' });
  const isBiwired = ways > 1 && chance(random, 0.4);
  if (isBiwired) parts.push({ kind: 'jumper', id: 'J1', nodes: ['in', 'hi'], note: '' });
  const high = isBiwired ? 'hi' : 'in';
  const speakers: ModelSpeaker[] = [];
  const strewn = (value: number): number => value * spread(random, 0.75, 1.35);
  const put = (
    role: 'woofer' | 'mid' | 'tweeter',
    node: string,
    chamberId: string | null,
    yM: number,
  ): DriverParameters => {
    const parameters = driver(random, role);
    const partId = `LS${speakers.length + 1}`;
    const nodes = chance(random, 0.3) ? (['0', node] as const) : ([node, '0'] as const);
    parts.push({ kind: 'speaker', id: partId, nodes, note: '', driverId: role });
    const distanceM = Math.hypot(1, yM);
    const pistonRadiusM = Math.sqrt(parameters.sdM2 / Math.PI);
    speakers.push({
      partId,
      parameters,
      chamberId,
      radiation: { distanceM, pistonRadiusM, offAxisDeg: 0, edges: null },
      measured: null,
    });
    return parameters;
  };
  const zobel = (node: string, { reOhm, leH }: DriverParameters): void => {
    if (!chance(random, 0.5)) return;
    const middle = `z${node}`;
    add.resistor(node, middle, strewn(1.2 * reOhm));
    add.capacitor(middle, '0', strewn(leH / reOhm ** 2 + 6e-6));
  };
  const lowPass = (from: string, to: string, hz: number, ohm: number): void => {
    const order = oneOf(random, [1, 2, 2, 3]);
    const omega = 2 * Math.PI * hz;
    const middle = order === 3 ? `${to}a` : to;
    add.coil(from, middle, strewn((1.2 * ohm) / omega));
    if (order > 1) add.capacitor(middle, '0', strewn(0.9 / (omega * ohm)));
    if (order === 3) add.coil(middle, to, strewn((0.5 * ohm) / omega));
  };
  const highPass = (from: string, to: string, hz: number, ohm: number): void => {
    const order = oneOf(random, [1, 2, 2, 3]);
    const omega = 2 * Math.PI * hz;
    const middle = order === 3 ? `${to}a` : to;
    add.capacitor(from, middle, strewn(0.8 / (omega * ohm)));
    if (order > 1) add.coil(middle, '0', strewn((1.1 * ohm) / omega));
    if (order === 3) add.capacitor(middle, to, strewn(1.8 / (omega * ohm)));
  };
  const pad = (from: string, to: string, ohm: number): void => {
    add.resistor(from, to, strewn(0.45 * ohm));
    if (chance(random, 0.7)) add.resistor(to, '0', strewn(2.2 * ohm));
  };

  const lowHz = ways === 3 ? spread(random, 250, 500) : spread(random, 1500, 3200);
  const wooferNode = ways === 1 ? (chance(random, 0.5) ? 'w' : 'in') : 'w';
  if (ways === 1 && wooferNode === 'w') {
    add.coil('in', 'w', spread(random, 0.5e-3, 1.5e-3));
    add.resistor('in', 'w', spread(random, 2, 6));
  }
  const woofer = put('woofer', wooferNode, 'low', -0.2);
  if (ways > 1) lowPass('in', 'w', lowHz, woofer.reOhm + 1.5);
  if (ways > 1 || chance(random, 0.5)) zobel(wooferNode, woofer);
  const chambers: ModelChamber[] = [];
  const ports: ModelPort[] = [];
  if (ways === 3) {
    const mid = put('mid', 'm3', 'middle', -0.05);
    highPass(high, 'm1', lowHz, mid.reOhm + 1.5);
    lowPass('m1', 'm2', spread(random, 2200, 3500), mid.reOhm + 1.5);
    pad('m2', 'm3', mid.reOhm);
    zobel('m3', mid);
    chambers.push({
      id: 'middle',
      volumeM3: spread(random, 0.002, 0.006),
      leak: null,
      absorption: { q: 12, atHz: 120 },
    });
  }
  if (ways > 1) {
    const padded = chance(random, 0.75);
    const tweeter = put('tweeter', padded ? 't2' : 't1', null, 0.05);
    highPass(high, 't1', ways === 3 ? 2800 : lowHz, tweeter.reOhm + 1);
    if (padded) pad('t1', 't2', tweeter.reOhm);
  }
  const vasM3 = woofer.cmsMPerN * woofer.sdM2 ** 2 * AIR.densityKgPerM3 * AIR.soundSpeedMPerS ** 2;
  const volumeM3 = vasM3 / spread(random, 0.7, 3);
  const fsHz = 1 / (2 * Math.PI * Math.sqrt(woofer.mmsKg * woofer.cmsMPerN));
  chambers.push({
    id: 'low',
    volumeM3,
    leak: { q: spread(random, 7, 25), atHz: fsHz },
    absorption: { q: 40, atHz: fsHz },
  });
  if (chance(random, 0.6)) {
    const areaM2 = woofer.sdM2 * between(random, 0.12, 0.3);
    const tuningHz = fsHz * between(random, 0.8, 1.2);
    const effectiveLengthM = (areaM2 * AIR.soundSpeedMPerS ** 2) / ((2 * Math.PI * tuningHz) ** 2 * volumeM3);
    ports.push({
      id: 'P1',
      chamberId: 'low',
      areaM2,
      effectiveLengthM,
      loss: { q: 50, atHz: tuningHz },
      radiation: { distanceM: 1.1, pistonRadiusM: 0.03, offAxisDeg: 0, edges: null },
    });
  }
  return {
    air: AIR,
    amplifiers: [{ id: 'V1', voltageV: 2.83, resistanceOhm: 0.08 }],
    parts,
    speakers,
    chambers,
    ports,
    passiveRadiators: [],
    radiation: 'half-space',
  };
}
