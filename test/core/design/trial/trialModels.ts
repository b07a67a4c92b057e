import type { Part } from '../../../../src/core/circuit/part.ts';
import type { MeasuredTable, ModelSpeaker, SpeakerModel } from '../../../../src/core/speaker/model.ts';
import { readModel } from '../../../../src/core/speaker/readModel.ts';
import { succeeded } from '../../circuit/solved.ts';
import { speakerAt, speakerPart, tweeter, twoWay, woofer } from '../../speaker/fixture.ts';
import { demoProject } from '../demoProject.ts';

/** An invented measurement: a level with a bump, a phase that turns. */
const table = (level: number, turn: number): MeasuredTable => {
  const frequenciesHz = Float64Array.from({ length: 60 }, (_, i) => 100 * 250 ** (i / 59));
  return {
    frequenciesHz,
    magnitudes: frequenciesHz.map((f) => level * (1 + 0.3 * Math.sin(Math.log(f)))),
    phasesRad: frequenciesHz.map((f) => turn * Math.log(f / 1000)),
  };
};

export const measuredSpeaker = (speaker: ModelSpeaker): ModelSpeaker => ({
  ...speaker,
  measured: { blendHz: 500, response: { ...table(0.4, -0.6), baffle: 'own' }, impedance: table(7, 0.2) },
});

const coil = (id: string, nodes: readonly [string, string], henry: number): Part => ({
  kind: 'inductor',
  id,
  nodes,
  note: '',
  henry,
  dcrOhm: 0.2,
  coreLossTangent: 0,
});

/** Two woofers on one vented chamber, each behind a coil of its own, in series with one another as far as the network goes. */
const sharedChamber: SpeakerModel = {
  ...twoWay,
  parts: [
    ...twoWay.parts,
    coil('L9', ['in', 'w9'], 0.003),
    { kind: 'resistor', id: 'R9', nodes: ['w9', 'w8'], note: '', ohm: 3, ratedPowerW: null },
    // Reversed, and not on the return.
    speakerPart('LS9', 'w', 'w8'),
  ],
  speakers: [...twoWay.speakers, speakerAt('LS9', { ...woofer, blTm: 6.5 }, 'low', 1.1)],
};

/** Way by way on an amplifier of its own, one of them ideal. */
const twoAmplifiers: SpeakerModel = {
  ...twoWay,
  amplifiers: [
    { id: 'V1', voltageV: 2.83, resistanceOhm: 0 },
    {
      id: 'V2',
      voltageV: 2,
      resistanceOhm: 0.5,
      drive: (omegas, re, im) => {
        for (let f = 0; f < omegas.length; f++) {
          re[f] = 0.8;
          im[f] = omegas[f]! / 1e5;
        }
      },
    },
  ],
  parts: [
    ...twoWay.parts.map((part) => (part.id === 'C2' ? { ...part, nodes: ['in2', 't'] as const } : part)),
    { kind: 'amplifier', id: 'V2', nodes: ['in2', '0'], note: '' },
    { kind: 'resistor', id: 'R7', nodes: ['in', 't'], note: '', ohm: 300, ratedPowerW: null },
  ],
};

export const demoModel = (): SpeakerModel => succeeded(readModel(demoProject('reading-room'))).model;

/** The same as heard 20 degrees to the side. */
export const demoAside = (): SpeakerModel => {
  const project = demoProject('reading-room');
  const aside = { ...project, listening: { ...project.listening, horizontalDeg: 20 } };
  return succeeded(readModel(aside)).model;
};

export const MODELS: Readonly<Record<string, SpeakerModel>> = {
  'a two-way': twoWay,
  'demo (a)': demoModel(),
  'two woofers that share a chamber': sharedChamber,
  'measured speakers, each alone with its air': {
    ...twoWay,
    speakers: twoWay.speakers.map(measuredSpeaker),
  },
  'measured speakers that share a chamber': {
    ...sharedChamber,
    speakers: sharedChamber.speakers.map((speaker) => (speaker.partId === 'LS9' ? speaker : measuredSpeaker(speaker))),
  },
  'two amplifiers, one of them ideal': twoAmplifiers,
  'two speakers side by side, one of them the other way round': {
    ...sharedChamber,
    parts: [...sharedChamber.parts.filter(({ id }) => id !== 'LS9'), speakerPart('LS9', '0', 'w')],
  },
  'an open baffle and a tweeter': {
    ...twoWay,
    speakers: [speakerAt('LS1', woofer, null), speakerAt('LS2', tweeter, null)],
    chambers: [],
    ports: [],
  },
};
