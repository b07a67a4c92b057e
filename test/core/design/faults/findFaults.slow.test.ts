import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  type FaultReport,
  type FaultSearch,
  faultKey,
  faultsOfProject,
  findFaults,
} from '../../../../src/core/design/faults/index.ts';
import { randomStream } from '../../../../src/core/math/index.ts';
import { readColumns } from '../../../../src/core/measured/index.ts';
import { listeningPoint } from '../../../../src/core/speaker/index.ts';
import { type Bed, bedOf, kindsOf, placeOfTruth, plant, search } from '../../../faults/plant.ts';
import { randomDesign } from '../../../faults/randomDesign.ts';
import { demoProject } from '../demoProject.ts';
import { demoModel } from './demoBuild.ts';

const SEED = 31337;
/** A loaded machine must not fail what is only slow. */
const PATIENT = { timeout: 240_000 };

function read(path: string) {
  const text = readFileSync(new URL(`../../../../demo-data/${path}`, import.meta.url), 'utf8');
  const curves = readColumns(text, path);
  if (!curves.ok) throw new Error(JSON.stringify(curves.problems));
  return curves.value;
}

const impedanceFrom = (path: string) => {
  const { frequenciesHz, magnitudes, phasesDeg } = read(path);
  return { frequenciesHz, magnitudesOhm: magnitudes, phasesDeg, noiseShare: null };
};

/** The microphone 0.4 m straight before a driver, as the demonstration's files have it. */
function heardFrom(name: 'reading-room' | 'kitchen-shelf', partId: string, path: string) {
  const { frequenciesHz, magnitudes } = read(path);
  const { listening, enclosure } = demoProject(name);
  const heightM = listening.standHeightM + enclosure.mounts.find((m) => m.partId === partId)!.yM;
  const there = { ...listening, distanceM: 0.4, heightM, horizontalDeg: 0, verticalDeg: 0 };
  expect(listeningPoint(there).zM).toBeCloseTo(0.4, 9);
  return { frequenciesHz, levelsDb: magnitudes, listening: there };
}

function reportOf(found: ReturnType<typeof findFaults>): FaultReport {
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
}

const namesOf = ({ groups }: FaultReport): string[] =>
  groups[0]!.members.map(({ faults }) => faults.map(faultKey).join(' + '));

describe('the invented measurements', () => {
  it('of the left reading-room loudspeaker have nothing wrong', () => {
    const report = reportOf(
      faultsOfProject({
        project: demoProject('reading-room'),
        impedance: impedanceFrom('reading-room/left-impedance.csv'),
        response: heardFrom('reading-room', 'LS3', 'reading-room/left-response-0.4m.txt'),
      }),
    );
    expect(report.verdict).toBe('nothing-wrong');
    expect(report.nextMeasurement).toBeNull();
    expect(report.groups[0]!.probability).toBeGreaterThan(0.9);
  });

  it('of the right one have 4.7 ohm for R4 instead of 2.7, as its README says', () => {
    const shares: number[] = [];
    const report = reportOf(
      faultsOfProject({
        project: demoProject('reading-room'),
        impedance: impedanceFrom('reading-room/right-impedance.csv'),
        onProgress: (share) => shares.push(share),
      }),
    );
    expect(report.verdict).toBe('found');
    expect(namesOf(report)).toEqual(['part-value R4']);
    const [fitted] = report.groups[0]!.members[0]!.fitted;
    // As built it is 4.7 within the 1 to 3 % by which all parts of that file deviate.
    expect(fitted!.value).toBeGreaterThan(4.7 * 0.96);
    expect(fitted!.value).toBeLessThan(4.7 * 1.04);
    expect(fitted!.nominal).toBe(2.7);
    // Before and after, beside 512 readings.
    expect(report.misfitHealthy).toBeGreaterThan(report.groups[0]!.members[0]!.misfit + 100);
    expect(report.chance).toBeGreaterThan(0.01);
    expect(report.nextMeasurement!.difference).toBeGreaterThan(25);
    expect(report.problems.map(({ code }) => code)).toEqual(['faults.reversal-invisible']);
    expect(shares.every((share, k) => share >= 0 && share <= 1 && share >= (shares[k - 1] ?? 0))).toBe(true);
    expect(shares.at(-1)).toBe(1);
  });

  it('of the right kitchen shelf have a driver turned round, which the impedance alone does not tell', () => {
    const project = demoProject('kitchen-shelf');
    const impedance = impedanceFrom('kitchen-shelf/right-impedance.txt');
    const deaf = reportOf(faultsOfProject({ project, impedance }));
    expect(deaf.verdict).toBe('nothing-wrong');
    expect(deaf.invisible.map(faultKey)).toEqual(['driver-reversed LS1', 'driver-reversed LS2']);
    const response = heardFrom('kitchen-shelf', 'LS2', 'kitchen-shelf/right-response.txt');
    const report = reportOf(faultsOfProject({ project, impedance, response }));
    expect(report.verdict).toBe('found');
    // Of two drivers, one or the other turned round sounds alike.
    expect(namesOf(report).sort()).toEqual(['driver-reversed LS1', 'driver-reversed LS2']);
    expect(report.nextMeasurement!.measurement.kind).toBe('cone-direction');
    const left = reportOf(
      faultsOfProject({
        project,
        impedance: impedanceFrom('kitchen-shelf/left-impedance.txt'),
        response: heardFrom('kitchen-shelf', 'LS2', 'kitchen-shelf/left-response.txt'),
      }),
    );
    expect(left.verdict).toBe('nothing-wrong');
  });

  it('of the teaching box have its tube cut shorter, and not where it was left', () => {
    const project = demoProject('port-lesson');
    const whole = reportOf(
      faultsOfProject({ project, impedance: impedanceFrom('port-lesson/impedance-tube-120mm.txt') }),
    );
    expect(whole.verdict).toBe('nothing-wrong');
    const cut = reportOf(faultsOfProject({ project, impedance: impedanceFrom('port-lesson/impedance-tube-60mm.txt') }));
    expect(namesOf(cut)).toEqual(['port-length P1']);
    // 60 of 120 mm and end corrections of 0.85 + 0.61 radii of 32 mm (L. L. Beranek, Acoustics, 1954, from memory).
    expect(cut.groups[0]!.members[0]!.fitted[0]!.value).toBeCloseTo((60 + 46.8) / (120 + 46.8), 1);
  });
});

describe('the search', () => {
  const model = demoModel('kitchen-shelf');
  const bed = bedOf('kitchen-shelf', model, SEED);
  const taken = (): FaultSearch => ({ model, impedance: plant(bed, 'part-short', SEED).impedance });

  it('does not explain what is no loudspeaker of that design', () => {
    const { impedance } = taken();
    const magnitudesOhm = Array.from(impedance.magnitudesOhm, (ohm, f) => ohm * (1 + 0.5 * Math.sin(f / 7)));
    const report = reportOf(findFaults({ model, impedance: { ...impedance, magnitudesOhm } }));
    expect(report.verdict).toBe('not-explained');
    expect(report.problems[0]!.code).toBe('faults.not-explained');
    expect(report.chance).toBeLessThan(1e-4);
  });

  it('stops when it is told to, with what it has', () => {
    let asked = 0;
    const report = reportOf(findFaults({ ...taken(), shouldStop: () => ++asked > 20 }));
    expect(report.wasStopped).toBe(true);
    expect(report.groups.length).toBeGreaterThan(0);
    expect(asked).toBeLessThan(30);
  });

  it('gives the same answer twice', () => {
    expect(reportOf(findFaults(taken()))).toEqual(reportOf(findFaults(taken())));
  });

  it('refuses an impedance of three readings', () => {
    const impedance = { frequenciesHz: [10, 100, 1000], magnitudesOhm: [6, 6, 6], phasesDeg: null, noiseShare: 0.01 };
    const found = findFaults({ model, impedance });
    expect(found.ok ? [] : found.problems.map(({ code }) => code)).toEqual(['faults.too-few-readings']);
  });
});

describe(`planted faults, seed ${SEED}`, () => {
  const random = randomStream(SEED);
  const draw = (): number => Math.floor(random.uniform() * 2 ** 31);
  const beds: Bed[] = [
    bedOf('kitchen-shelf', demoModel('kitchen-shelf'), draw()),
    bedOf('port-lesson', demoModel('port-lesson'), draw()),
    ...Array.from({ length: 4 }, (_, k) => bedOf(`random ${k + 1}`, randomDesign(randomStream(draw())), draw())),
  ];

  // 98 % of so few is less than one miss: the whole run (`npm run faults`) is what measures that aim.
  it('are first in at least nine of ten, and among the first three in all but one', PATIENT, () => {
    const places: number[] = [];
    for (let k = 0; k < 16; k++) {
      const bed = beds[k % beds.length]!;
      const kinds = kindsOf(bed);
      const planted = plant(bed, kinds[Math.floor(random.uniform() * kinds.length)]!, draw());
      if (planted.counts) places.push(placeOfTruth(planted, search(bed, planted)));
    }
    expect(places.length).toBeGreaterThan(10);
    expect(places.filter((place) => place === 0).length / places.length).toBeGreaterThanOrEqual(0.9);
    expect(places.filter((place) => place < 0 || place > 2).length).toBeLessThanOrEqual(1);
  });

  it('are not found in healthy builds, one of 8 at most', PATIENT, () => {
    let alarms = 0;
    for (let k = 0; k < 8; k++) {
      const bed = beds[k % beds.length]!;
      if (search(bed, plant(bed, 'healthy', draw())).verdict !== 'nothing-wrong') alarms++;
    }
    expect(alarms).toBeLessThanOrEqual(1);
  });
});
