// `npm run faults`: plants faults into the demo projects and into random designs and looks for them. `-- --seed N --plants M` choose
// other draws; `--verbose` tells every miss, `--only K` looks at plant K alone, `--without-phase` takes the phase away. Half as many
// healthy builds go with the plants, or `--healthy H` of them. Everything but the time is drawn from the seed.
import { readFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { parseArgs } from 'node:util';
import { faultKey } from '../../src/core/design/faults/index.ts';
import { readProject } from '../../src/core/document/file/readProject.ts';
import { randomStream } from '../../src/core/math/randomStream.ts';
import { readModel } from '../../src/core/speaker/readModel.ts';
import { type Bed, bedOf, kindsOf, type PlantKind, placeOfTruth, plant, search } from './plant.ts';
import { randomDesign } from './randomDesign.ts';

const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' },
    plants: { type: 'string', default: '200' },
    verbose: { type: 'boolean', default: false },
    healthy: { type: 'string' },
    only: { type: 'string' },
    'without-phase': { type: 'boolean', default: false },
  },
});
const [seed, plants] = [Number(values.seed), Number(values.plants)];
if (!Number.isInteger(seed) || !Number.isInteger(plants) || plants < 1) {
  console.error('--seed and --plants take whole numbers, --plants above 0.');
  process.exit(2);
}
const RANDOM_DESIGNS = 20;
const DEMOS = ['reading-room', 'kitchen-shelf', 'port-lesson'];

const random = randomStream(seed);
const draw = (): number => Math.floor(random.uniform() * 2 ** 31);
const beds: Bed[] = [
  ...DEMOS.map((name) => {
    const file = new URL(`../../demo-data/${name}/${name}.conewright.json`, import.meta.url);
    const project = readProject(readFileSync(file, 'utf8'));
    const read = project.ok ? readModel(project.value) : project;
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    return bedOf(name, read.value.model, draw());
  }),
  ...Array.from({ length: RANDOM_DESIGNS }, (_, k) =>
    bedOf(`random ${k + 1}`, randomDesign(randomStream(draw())), draw()),
  ),
];
console.log(`seed ${seed}, ${plants} plants, ${DEMOS.length} demo projects and ${RANDOM_DESIGNS} random designs`);
console.log(`machine load ${loadavg()[0]!.toFixed(2)} on ${cpus().length} cores`);

interface Tally {
  planted: number;
  counted: number;
  first: number;
  three: number;
}
const tallies = new Map<PlantKind, Tally>();
let longest = { seconds: 0, cpu: 0, what: 'none' };

function ranked(bed: Bed, kind: PlantKind, plantSeed: number) {
  const whole = plant(bed, kind, plantSeed);
  const planted = values['without-phase'] ? { ...whole, impedance: { ...whole.impedance, phasesDeg: null } } : whole;
  const [began, used] = [performance.now(), process.cpuUsage()];
  const report = search(bed, planted);
  const seconds = (performance.now() - began) / 1000;
  if (seconds > longest.seconds) {
    const { user, system } = process.cpuUsage(used);
    longest = { seconds, cpu: (user + system) / 1e6, what: `${bed.name}, ${kind}` };
  }
  return { planted, report };
}

for (let k = 0; k < plants; k++) {
  const bed = beds[k % beds.length]!;
  const kinds = kindsOf(bed);
  const kind = kinds[Math.floor(random.uniform() * kinds.length)]!;
  const plantSeed = draw();
  if (values.only !== undefined && Number(values.only) !== k) continue;
  const { planted, report } = ranked(bed, kind, plantSeed);
  const tally = tallies.get(kind) ?? { planted: 0, counted: 0, first: 0, three: 0 };
  tallies.set(kind, tally);
  tally.planted++;
  if (!planted.counts) continue;
  tally.counted++;
  const place = placeOfTruth(planted, report);
  if (place === 0) tally.first++;
  if (place >= 0 && place < 3) tally.three++;
  if (place !== 0 && values.verbose) {
    console.log(
      `missed (${place}) plant ${k}, ${bed.name}: ${planted.faults.map(faultKey).join(' + ')}; ${report.verdict}, chance ${report.chance.toExponential(1)}, healthy ${report.misfitHealthy.toFixed(0)}`,
    );
    for (const { probability, members } of report.groups.slice(0, 3)) {
      const names = members
        .slice(0, 3)
        .map(({ faults, misfit }) => `${faults.map(faultKey).join(' + ') || 'healthy'} [${misfit.toFixed(0)}]`);
      console.log(`    ${probability.toExponential(1)} ${names.join(' | ')}`);
    }
  }
}

const healthyCount = values.only === undefined ? Number(values.healthy ?? Math.max(1, Math.round(plants / 2))) : 0;
let alarms = 0;
for (let k = 0; k < healthyCount; k++) {
  const bed = beds[k % beds.length]!;
  const { report } = ranked(bed, 'healthy', draw());
  if (report.verdict === 'nothing-wrong') continue;
  alarms++;
  if (values.verbose)
    console.log(
      `false alarm in ${bed.name}: ${report.verdict}, ${report.groups[0]!.members[0]!.faults.map(faultKey).join(' + ')}, chance ${report.chance.toExponential(1)}`,
    );
}

const percent = (part: number, whole: number): string => (whole === 0 ? '-' : ((100 * part) / whole).toFixed(1));
console.log(
  `\n${'kind of fault'.padEnd(20)}${'planted'.padStart(9)}${'counted'.padStart(9)}${'top1 %'.padStart(9)}${'top3 %'.padStart(9)}`,
);
const all: Tally = { planted: 0, counted: 0, first: 0, three: 0 };
for (const [kind, tally] of [...tallies].sort(([a], [b]) => (a < b ? -1 : 1))) {
  const cells = [
    String(tally.planted),
    String(tally.counted),
    percent(tally.first, tally.counted),
    percent(tally.three, tally.counted),
  ];
  console.log(kind.padEnd(20) + cells.map((cell) => cell.padStart(9)).join(''));
  for (const key of ['planted', 'counted', 'first', 'three'] as const) all[key] += tally[key];
}
console.log(
  `\n${all.counted} of ${all.planted} plants change the measurement by more than the tolerance band and count; ${healthyCount} healthy builds`,
);
console.log(
  `longest ranking ${longest.seconds.toFixed(2)} s (${longest.cpu.toFixed(2)} s of processor time): ${longest.what}; aim 5 s`,
);
console.log(
  `top1 ${percent(all.first, all.counted)} %, top3 ${percent(all.three, all.counted)} %, false alarms ${percent(alarms, healthyCount)} %`,
);
