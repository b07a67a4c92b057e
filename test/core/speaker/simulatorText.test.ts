import { describe, expect, it } from 'vitest';
import {
  type Branch,
  compileCircuit,
  inputImpedance,
  type Part,
  parseNetlist,
  partBranches,
} from '../../../src/core/circuit/index.ts';
import type { Project } from '../../../src/core/document/schema.ts';
import { word } from '../../../src/core/messages/word.ts';
import { assembleCircuit } from '../../../src/core/speaker/assemble.ts';
import { readModel } from '../../../src/core/speaker/readModel.ts';
import { simulatorText } from '../../../src/core/speaker/simulatorText.ts';
import { solved, succeeded } from '../circuit/solved.ts';
import { demoProject } from '../design/demoProject.ts';

const demos = ['reading-room', 'kitchen-shelf', 'port-lesson'] as const;
const SOURCE = /^(V\S* \S+ \S+) DC 0 AC \S+$/;
/** What `parseNetlist` makes of the text without its directives; a source's values are cut off, as the amplifier states them here. */
const read = (text: string): Part[] =>
  succeeded(
    parseNetlist(
      text
        .split('\n')
        .filter((line) => !line.startsWith('.'))
        .map((line) => line.replace(SOURCE, '$1'))
        .join('\n'),
    ),
  );
const omegas = Float64Array.from({ length: 121 }, (_, i) => 2 * Math.PI * 10 * 2000 ** (i / 120));
const impedance = (branches: readonly Branch[], source = 'V1') => {
  succeeded(compileCircuit(branches));
  return inputImpedance(solved(branches, omegas), source);
};
const asBranches = (parts: readonly Part[]): Branch[] =>
  parts.flatMap((part): readonly Branch[] =>
    part.kind === 'amplifier'
      ? [{ kind: 'source', id: part.id, nodes: part.nodes, voltageV: 1, resistanceOhm: 0 } as const]
      : partBranches(part),
  );
/** The project with one driver straight on an amplifier without resistance. */
const alone = (project: Project, partId: string): Project => {
  const speaker = project.network.parts.find((p) => p.id === partId)!;
  const amplifier = project.network.parts.find((p) => p.kind === 'amplifier')!;
  const settings = project.chain.amplifiers.filter(({ id }) => id === amplifier.id);
  return {
    ...project,
    network: { parts: [amplifier, { ...speaker, nodes: [...amplifier.nodes] }] },
    chain: { ...project.chain, amplifiers: settings.map((a) => ({ ...a, outputResistanceOhm: 0, cableOhm: 0 })) },
    enclosure: {
      ...project.enclosure,
      mounts: project.enclosure.mounts.filter((m) => m.partId === partId).map((m) => ({ ...m, chamberId: null })),
    },
  };
};
const speakers = demos.flatMap((name) =>
  demoProject(name)
    .network.parts.filter(({ kind }) => kind === 'speaker')
    .map(({ id }) => [name, id] as const),
);

describe('simulatorText', () => {
  it.each(demos)('every line of %s is a comment, a directive, a source or understood here', (name) => {
    const { text } = succeeded(simulatorText(demoProject(name)));
    const lines = text.trimEnd().split('\n');
    expect(lines.at(-1)).toBe('.end');
    expect(lines.filter((line) => line.startsWith('.')).map((line) => line.split(' ')[0])).toEqual(['.ac', '.end']);
    const elements = lines.filter((line) => !line.startsWith('*') && !line.startsWith('.'));
    const parts = read(text);
    expect(parts).toHaveLength(elements.length);
    expect(new Set(parts.map(({ kind }) => kind))).not.toContain('speaker');
    expect(elements.filter((line) => SOURCE.test(line))).toHaveLength(demoProject(name).chain.amplifiers.length);
  });

  it.each(speakers)(
    '%s: %s has the model’s impedance in free air within the error that the remark states',
    (name, id) => {
      const project = alone(demoProject(name), id);
      const { text, remarks } = succeeded(simulatorText(project));
      const fit = remarks.find(({ code }) => code === 'speaker.export-fit');
      // Without a ladder only rounding is left.
      const tolerance = fit === undefined ? 1e-9 : Number(fit.values.errorPercent) / 100;
      expect(tolerance).toBeLessThan(0.01);
      const { model } = succeeded(readModel(project, new Map()));
      const bare = { ...model, chambers: [], ports: [] };
      const expected = impedance(assembleCircuit(bare));
      const found = impedance(asBranches(read(text)));
      let greatest = 0;
      for (let f = 0; f < omegas.length; f++) {
        const off = Math.hypot(found.re[f]! - expected.re[f]!, found.im[f]! - expected.im[f]!);
        greatest = Math.max(greatest, off / Math.hypot(expected.re[f]!, expected.im[f]!));
      }
      expect(greatest).toBeLessThan(tolerance);
    },
  );

  it('remarks on free air once, on each ladder and on what is a comment, all in words', () => {
    const demo = demoProject('reading-room');
    const bare = demo.drivers.map((d) => (d.id === 'tweeter' ? { ...d, entered: { reOhm: 5 } } : d));
    const { text, remarks } = succeeded(simulatorText({ ...demo, drivers: bare }));
    const codes = remarks.map(({ code }) => code);
    expect(codes.filter((code) => code === 'speaker.export-free-air')).toHaveLength(1);
    expect(remarks.filter(({ code }) => code === 'speaker.export-fit').map(({ place }) => place.id)).toEqual([
      'LS1',
      'LS2',
    ]);
    expect(remarks.filter(({ code }) => code === 'circuit.export-driver').map(({ place }) => place.id)).toEqual([
      'LS3',
    ]);
    expect(text).toMatch(/^\* LS3 .*without equivalent elements$/m);
    for (const remark of remarks) expect(word(remark).sentence).not.toMatch(/no description|undefined|NaN/);
  });

  it('refuses a channel without settings', () => {
    const demo = demoProject('port-lesson');
    const found = simulatorText({ ...demo, chain: { ...demo.chain, amplifiers: [] } });
    expect(found.ok ? [] : found.problems.map(({ code }) => code)).toEqual(['speaker.unknown-amplifier']);
  });
});
