import type { Command, CommandType, NewPart } from '../../src/core/document/command.ts';
import type { Project, Wood } from '../../src/core/document/schema.ts';
import { newChamber } from '../../src/core/document/start/newChamber.ts';
import { newLine } from '../../src/core/document/start/newLine.ts';
import { newPort } from '../../src/core/document/start/newPort.ts';
import { newRadiator } from '../../src/core/document/start/newRadiator.ts';
import { newWay } from '../../src/core/document/start/newWay.ts';
import { capacitor, inductor, resistor } from '../core/document/twoWay.ts';

/** Numbers from which one command is made; a prime step walks through every list. */
export interface Dice {
  readonly type: number;
  readonly a: number;
  readonly b: number;
  readonly c: number;
  /** Around 1: scales a value. Sometimes zero, negative or no number. */
  readonly factor: number;
}

const newParts: readonly NewPart[] = [
  { kind: 'resistor', ohm: 3.3, ratedPowerW: 10, note: '' },
  { kind: 'capacitor', farad: 4.7e-6, esrOhm: 0.02, note: '' },
  { kind: 'inductor', henry: 0.5e-3, dcrOhm: 0.2, coreLossTangent: 0.01, note: '' },
  { kind: 'jumper', note: '' },
  { kind: 'amplifier', note: '' },
];

const pick = <T>(list: readonly T[], die: number): T | undefined => list[die % Math.max(1, list.length)];

type Maker = (project: Project, dice: Dice) => Command;

const partId = (project: Project, die: number) => pick(project.network.parts, die)?.id ?? 'R1';
const node = (project: Project, die: number) =>
  pick([...new Set(project.network.parts.flatMap(({ nodes }) => nodes))], die) ?? '0';
const speakerId = ({ network }: Project, die: number) =>
  pick(
    network.parts.filter(({ kind }) => kind === 'speaker'),
    die,
  )?.id ?? 'LS1';
const driverId = (project: Project, die: number) => pick(project.drivers, die)?.id ?? 'none';
const chamberId = (project: Project, die: number) => pick(project.enclosure.chambers, die)?.id ?? 'none';
const portId = (project: Project, die: number) => pick(project.enclosure.ports, die)?.id ?? 'none';
const curveId = (project: Project, die: number) => pick(project.curves, die)?.id ?? 'none';
const stateId = (project: Project, die: number) => pick(project.snapshots, die)?.id ?? 'none';
const end = (die: number): 0 | 1 => (die % 2 === 0 ? 0 : 1);
const part = (project: Project, die: number): NewPart =>
  die % 6 === 5 ? { kind: 'speaker', driverId: driverId(project, die), note: '' } : pick(newParts, die)!;
const section = [
  [inductor('L', ['@in', '@out']), capacitor('C', ['@out', '0'])],
  [capacitor('C', ['@in', '@1']), inductor('L', ['@1', '0']), resistor('R', ['@1', '@out'])],
  [resistor('R', ['@out', '@1']), capacitor('C', ['@1', '0'])],
  [resistor('R', ['@in', 'astray'])],
];

/** One maker for each type of command: most of what it makes can be carried out, some of it must be refused. */
export const makers: { readonly [T in CommandType]: Maker } = {
  'set-name': (_, { a }) => ({ type: 'set-name', name: a % 9 === 0 ? '' : `Name ${a}` }),
  'set-notes': (_, { a }) => ({ type: 'set-notes', notes: a % 9 === 0 ? 'x'.repeat(20_001) : `Note ${a}` }),
  'set-air': (_, { factor }) => ({ type: 'set-air', changes: { temperatureC: 20 * factor } }),
  'set-listening': (_, { a, factor }) => ({
    type: 'set-listening',
    changes: a % 2 === 0 ? { distanceM: 2 * factor } : { horizontalDeg: 20 * factor },
  }),
  'set-drive': (_, { factor }) => ({ type: 'set-drive', driveV: 2.83 * factor }),
  'set-amplifier': (project, { a, factor }) => ({
    type: 'set-amplifier',
    id: a % 9 === 0 ? 'none' : pick(project.chain.amplifiers, a)!.id,
    changes: { cableOhm: 0.1 * factor },
  }),
  'set-part': (project, { a, b, factor }) => {
    const present = pick(project.network.parts, a);
    if (present?.kind === 'resistor') return { type: 'set-part', partId: present.id, changes: { ohm: factor * 5 } };
    if (present?.kind === 'speaker') {
      return { type: 'set-part', partId: present.id, changes: { driverId: driverId(project, b) } };
    }
    return { type: 'set-part', partId: partId(project, a), changes: { farad: factor * 5e-6 } };
  },
  'swap-part': (project, { a, b }) => ({ type: 'swap-part', partId: partId(project, a), part: part(project, b) }),
  'insert-in-series': (project, { a, b, c }) => ({
    type: 'insert-in-series',
    partId: partId(project, a),
    end: end(b),
    part: part(project, c),
  }),
  'add-across': (project, { a, b, c }) => ({
    type: 'add-across',
    nodes: [node(project, a), node(project, b)],
    part: part(project, c),
  }),
  'move-end': (project, { a, b, c }) => ({
    type: 'move-end',
    partId: partId(project, a),
    end: end(b),
    to: node(project, c),
  }),
  'remove-part': (project, { a, b }) => ({
    type: 'remove-part',
    partId: partId(project, a),
    how: b % 2 === 0 ? 'close-up' : 'leave-open',
  }),
  'rename-part': (project, { a, b }) => {
    const id = partId(project, a);
    return { type: 'rename-part', partId: id, to: b % 5 === 0 ? 'X1' : `${id.replace(/\d+$/, '')}${b % 40}` };
  },
  'reverse-speaker': (project, { a, b }) => ({
    type: 'reverse-speaker',
    partId: b % 9 === 0 ? partId(project, a) : speakerId(project, a),
  }),
  'insert-section': (project, { a, b }) => ({
    type: 'insert-section',
    speakerId: speakerId(project, a),
    parts: pick(section, b)!,
  }),
  'replace-network': (project, { a, b }) => ({
    type: 'replace-network',
    parts: project.network.parts.filter((_, k) => (b % 3 === 0 ? k !== 0 : k % (2 + (a % 5)) !== 1)),
  }),
  'remove-amplifier': (project, { a }) => ({
    type: 'remove-amplifier',
    id: pick(project.chain.amplifiers, a)?.id ?? 'none',
  }),
  'add-way': (project, { a, b, factor }) => {
    const way = newWay(project, pick(['woofer', 'mid', 'tweeter', 'full-range'] as const, a)!);
    return b % 3 === 0 ? { ...way, mount: { ...way.mount, yM: way.mount.yM * factor } } : way;
  },
  'remove-way': (project, { a }) => ({ type: 'remove-way', speakerId: speakerId(project, a) }),
  'set-driver': (project, { a, b, c, factor }) => {
    const driver = pick(project.drivers, a)!;
    const measured = {
      responseCurveId: curveId(project, b),
      impedanceCurveId: c % 3 === 0 ? curveId(project, c) : null,
      blendHz: 300,
    };
    if (b % 3 === 0) return { type: 'set-driver', driverId: driver.id, changes: { measured } };
    const entered = { ...driver.entered, fsHz: (driver.entered.fsHz ?? 50) * factor };
    return { type: 'set-driver', driverId: driver.id, changes: { entered } };
  },
  'set-enclosure': (project, { a, factor }) => {
    const { widthM, heightM, depthM, panelM } = project.enclosure;
    const sizes = [{ widthM: widthM * factor }, { heightM: heightM * factor }, { depthM: depthM * factor }];
    return { type: 'set-enclosure', changes: pick([...sizes, { panelM: panelM * factor }], a)! };
  },
  'set-wood': (project, { a, b, factor }) => {
    const brace = { id: `brace-${b % 5}`, chamberId: chamberId(project, a), lies: 'level', atM: 0.2 * factor } as const;
    const { braces } = project.enclosure.wood;
    const added = [...braces, { ...brace, thicknessM: 0.018, openShare: 0.5 }];
    return {
      type: 'set-wood',
      changes: pick<Partial<Wood>>(
        [{ braces: added }, { braces: braces.slice(1) }, { frontLeanDeg: 5 * factor }, { backM: 0.018 * factor }],
        b,
      )!,
    };
  },
  'add-chamber': (project, { a }) => ({
    type: 'add-chamber',
    chamber: a % 5 === 0 ? { ...newChamber(project), id: chamberId(project, a) } : newChamber(project),
  }),
  'set-chamber': (project, { a, b, factor }) => ({
    type: 'set-chamber',
    id: chamberId(project, a),
    changes:
      b % 2 === 0
        ? { volume: { kind: 'geometry', bottomM: 0.02, topM: 0.3 * factor, depthM: null } }
        : b % 3 === 0
          ? { bracesM3: 0.1 * factor }
          : { fillGain: factor },
  }),
  'remove-chamber': (project, { a }) => ({ type: 'remove-chamber', id: chamberId(project, a) }),
  'add-port': (project, { a, b }) => ({
    type: 'add-port',
    port: newPort(project, b % 5 === 0 ? 'none' : chamberId(project, a)),
  }),
  'set-port': (project, { a, b, factor }) => ({
    type: 'set-port',
    id: portId(project, a),
    changes:
      b % 2 === 0
        ? { lengthM: 0.1 * factor }
        : b % 3 === 0
          ? { toChamberId: chamberId(project, a) }
          : { chamberId: chamberId(project, b), innerFlareM: 0.01 * factor },
  }),
  'remove-port': (project, { a }) => ({ type: 'remove-port', id: portId(project, a) }),
  'add-radiator': (project, { a, b }) => ({
    type: 'add-radiator',
    radiator: { ...newRadiator(project, b % 5 === 0 ? 'none' : chamberId(project, a)) },
  }),
  'set-radiator': (project, { a, b, factor }) => ({
    type: 'set-radiator',
    id: pick(project.enclosure.passiveRadiators, a)?.id ?? 'none',
    changes: b % 2 === 0 ? { addedMassKg: 0.02 * factor } : { chamberId: chamberId(project, b) },
  }),
  'remove-radiator': (project, { a }) => ({
    type: 'remove-radiator',
    id: pick(project.enclosure.passiveRadiators, a)?.id ?? 'none',
  }),
  'add-line': (project, { a, b }) => ({
    type: 'add-line',
    line: newLine(project, b % 5 === 0 ? 'none' : chamberId(project, a)),
  }),
  'set-line': (project, { a, b, factor }) => ({
    type: 'set-line',
    id: pick(project.enclosure.lines, a)?.id ?? 'none',
    changes:
      b % 3 === 0
        ? { lengthM: factor }
        : { end: b % 3 === 1 ? { kind: 'closed' } : { kind: 'chamber', chamberId: chamberId(project, b) } },
  }),
  'remove-line': (project, { a }) => ({
    type: 'remove-line',
    id: pick(project.enclosure.lines, a)?.id ?? 'none',
  }),
  'set-mount': (project, { a, b, factor }) => ({
    type: 'set-mount',
    partId: speakerId(project, a),
    changes:
      b % 2 === 0
        ? { yM: 0.2 * factor }
        : b % 5 === 0
          ? { frontChamberId: chamberId(project, a) }
          : { chamberId: b % 3 === 0 ? null : chamberId(project, b), back: b % 9 === 0 ? 'open' : 'closed' },
  }),
  'add-curve': (project, { a, b }) => ({
    type: 'add-curve',
    curve: {
      id: a % 7 === 0 ? curveId(project, b) : `curve-${a}`,
      name: `Curve ${a}`,
      belongsTo:
        b % 2 === 0 ? { kind: 'driver', driverId: driverId(project, b) } : { kind: 'speaker', channel: 'left' },
      quantity: a % 2 === 0 ? 'response' : 'impedance',
      frequenciesHz: [20, 200, 2000],
      magnitudes: [5, 6, 7],
      phasesDeg: null,
      taken: { baffle: 'own', voltageV: 2.83, distanceM: 1 },
      sourceName: 'made.txt',
    },
  }),
  'set-curve': (project, { a, b }) => ({
    type: 'set-curve',
    id: curveId(project, a),
    changes: b % 2 === 0 ? { name: `Curve ${b}` } : { belongsTo: { kind: 'driver', driverId: driverId(project, b) } },
  }),
  'remove-curve': (project, { a }) => ({ type: 'remove-curve', id: curveId(project, a) }),
  'keep-state': (_, { a }) => ({ type: 'keep-state', name: `State ${a}` }),
  'drop-state': (project, { a }) => ({ type: 'drop-state', id: stateId(project, a) }),
  'return-to-state': (project, { a }) => ({ type: 'return-to-state', id: stateId(project, a) }),
  together: (project, dice) => ({
    type: 'together',
    commands: [
      makers['set-drive'](project, dice),
      makers['set-part'](project, { ...dice, factor: 1.5 }),
      makers['set-name'](project, dice),
    ],
  }),
};

const types = Object.keys(makers) as readonly CommandType[];

/** The command that the dice make of a document. */
export const randomCommand = (project: Project, dice: Dice): Command =>
  makers[types[dice.type % types.length]!](project, dice);
