import { describe, expect, it } from 'vitest';
import { type Evaluated, evaluateProject } from '../../../../src/core/design/evaluateProject.ts';
import { laterChecks } from '../../../../src/core/design/findings/later.ts';
import type { Project } from '../../../../src/core/document/schema.ts';
import { word } from '../../../../src/core/messages/index.ts';
import { magnitudes } from '../../../../src/core/speaker/complexCurve.ts';
import { driven, line, radiator, rounded, withOpenings } from '../boxWithOpenings.ts';

const evaluated = (project: Project): Evaluated => {
  const result = evaluateProject(project, undefined, laterChecks);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const found = (project: Project, code: string) => evaluated(project).findings.filter((f) => f.code === code);

/** Greatest of √2 |U|/(S ω) or √2 |U|/S from 20 Hz up, from the flow alone. */
const greatest = (
  { simulation }: Evaluated,
  which: 'passiveRadiators' | 'lines',
  areaM2: number,
  per: (hz: number) => number,
) => {
  const flow = magnitudes(simulation[which][0]!.volumeVelocity);
  return Math.max(
    ...simulation.frequenciesHz.map((hz, i) => (hz < 20 ? 0 : (Math.SQRT2 * flow[i]!) / (areaM2 * per(hz)))),
  );
};

describe('a passive radiator', () => {
  const project = withOpenings({ passiveRadiators: [radiator] });
  it('has the excursion that its flow makes, in the figures', () => {
    const result = evaluated(project);
    const [figure] = result.keyFigures.radiatorExcursions;
    const peakM = greatest(result, 'passiveRadiators', 2 * radiator.sdM2, (hz) => 2 * Math.PI * hz);
    expect(figure!.peakM).toBeCloseTo(peakM, 12);
    expect(figure!.limitM).toBe(radiator.xmaxM);
    expect(evaluated(withOpenings({})).keyFigures.radiatorExcursions).toEqual([]);
  });
  it('is said to be past its limit from just above it, with its own name', () => {
    const [figure] = evaluated(project).keyFigures.radiatorExcursions;
    const limitV = (project.chain.driveV * radiator.xmaxM!) / figure!.peakM;
    expect(found(driven(project, 0.999 * limitV), 'finding.radiator-excursion')).toEqual([]);
    const [finding] = found(driven(project, 1.001 * limitV), 'finding.radiator-excursion');
    expect(finding).toMatchObject({ severity: 'warning', place: { kind: 'radiator', id: 'PR1' } });
    expect(finding!.values.peakM).toBeCloseTo(1.001 * radiator.xmaxM!, 9);
    expect(word(finding!).sentence).toContain('The passive radiator “back radiator” passes');
    expect(found(driven(project, 2.001 * limitV), 'finding.radiator-excursion')[0]!.severity).toBe('danger');
    const unstated = withOpenings({ passiveRadiators: [{ ...radiator, xmaxM: null }] });
    expect(found(driven(unstated, 10 * limitV), 'finding.radiator-excursion')).toEqual([]);
  });
});

describe('the mouth of a line', () => {
  const project = withOpenings({ lines: [line] });
  it('has the speed of its flow over its end area, and guide values of straight edges', () => {
    const result = evaluated(project);
    const [figure] = result.keyFigures.lineSpeeds;
    expect(figure!.peakMPerS).toBeCloseTo(
      greatest(result, 'lines', line.endAreaM2, () => 1),
      12,
    );
    expect([figure!.carefulMPerS, figure!.loudMPerS]).toEqual([10, 17]);
  });
  it('is said to be heard from just above the guide values', () => {
    const perVolt = evaluated(project).keyFigures.lineSpeeds[0]!.peakMPerS / project.chain.driveV;
    const codes = (mPerS: number) =>
      evaluated(driven(project, mPerS / perVolt)).findings.filter((f) => f.code.startsWith('finding.mouth'));
    expect(codes(9.99)).toEqual([]);
    const [careful] = codes(10.01);
    expect(careful).toMatchObject({ code: 'finding.mouth-careful', place: { kind: 'duct', id: 'LN1' } });
    expect(word(careful!).sentence).toContain('mouth of the line “short line”');
    expect(codes(17.01).map(({ code }) => code)).toEqual(['finding.mouth-loud']);
  });
});

describe('a port with rounded ends', () => {
  const radiusM = 0.04;
  const bore = { shape: { kind: 'round', diameterM: 2 * radiusM } } as const;
  const project = withOpenings({ ports: [{ ...rounded(0.02), ...bore, lengthM: 0.12 }] });
  const at = (mPerS: number, of = project) => {
    const perVolt = evaluated(of).keyFigures.portSpeeds[0]!.peakMPerS / of.chain.driveV;
    return evaluated(driven(of, mPerS / perVolt));
  };
  const codes = ({ findings }: Evaluated) =>
    findings.map(({ code }) => code).filter((c) => c.startsWith('finding.port'));
  it('has higher guide values where the rounding is a quarter of the bore’s radius or more', () => {
    const guides = (edgeM: number) => {
      const port = { ...rounded(edgeM), ...bore, lengthM: 0.12 };
      const [figure] = evaluated(withOpenings({ ports: [port] })).keyFigures.portSpeeds;
      return [figure!.carefulMPerS, figure!.loudMPerS, figure!.stroke !== null];
    };
    expect(guides(0)).toEqual([10, 17, false]);
    expect(guides(0.009)).toEqual([10, 17, false]);
    expect(guides(0.011)).toEqual([15, 20, true]);
    const oneEnd = { ...rounded(0.02), ...bore, innerFlareM: 0 };
    expect(evaluated(withOpenings({ ports: [oneEnd] })).keyFigures.portSpeeds[0]!.stroke).toBeNull();
  });
  it('is said to be heard by its speed at its own guide values', () => {
    expect(codes(at(14.9))).not.toContain('finding.port-careful');
    expect(codes(at(15.1))).toEqual(['finding.port-careful-rounded']);
    expect(codes(at(20.1))).toEqual(['finding.port-loud']);
  });
  it('is said to shed vortices where the air moves further than the rounding and fast enough for its boundary layer', () => {
    const { keyFigures, simulation, findings } = at(12);
    const { stroke } = keyFigures.portSpeeds[0]!;
    // Stroke v/ω at the frequency that is named.
    const i = simulation.frequenciesHz.indexOf(stroke!.atHz);
    const speed = Math.SQRT2 * simulation.ports[0]!.airSpeedRmsMPerS[i]!;
    expect(stroke!.overEdge).toBeCloseTo(speed / (2 * Math.PI * stroke!.atHz) / 0.02, 9);
    expect(stroke!.overEdge).toBeGreaterThan(1);
    // v δ/ν with δ = √(2ν/ω), ν = 1.51e-5 m²/s at 20 °C (handbook value, rounded): above 200.
    expect(speed * Math.sqrt(2 / (2 * Math.PI * stroke!.atHz * 1.51e-5))).toBeGreaterThan(200);
    const shed = findings.filter(({ code }) => code === 'finding.port-stroke');
    expect(shed).toHaveLength(1);
    expect(word(shed[0]!).sentence).toContain('20 mm');
    // Slow air moves as far without the energy to be heard: watched, not said.
    const slow = at(5);
    expect(slow.keyFigures.portSpeeds[0]!.stroke!.concern).toBe('watch');
    expect(codes(slow)).toEqual([]);
  });
});
