import { readFileSync } from 'node:fs';
import { evaluateProject, laterChecks, levelsDbSpl, readProject, word } from '../src/core/index.ts';

// The core without the app: reads a project, computes it, prints what the strip of key figures would say.
// Run with: npx tsx demo-data/from-node.ts [FILE.conewright.json]

const file = process.argv[2] ?? new URL('./reading-room/reading-room.conewright.json', import.meta.url);
const project = readProject(readFileSync(file, 'utf8'));
if (!project.ok) throw new Error(project.problems.map((p) => word(p).sentence).join(' '));
const evaluation = evaluateProject(project.value, undefined, laterChecks);
if (!evaluation.ok) throw new Error(evaluation.problems.map((p) => word(p).sentence).join(' '));

const { simulation, keyFigures, findings } = evaluation.value;
const levels = levelsDbSpl(simulation.sum);
console.log(project.value.name);
console.log(
  `mean level ${keyFigures.meanLevelDbSpl?.toFixed(1)} dB, 3 dB down at ${keyFigures.lowMinus3Hz?.toFixed(0)} Hz`,
);
for (const hz of [50, 100, 200, 500, 1000, 2000, 5000, 10000]) {
  const at = simulation.frequenciesHz.findIndex((f) => f >= hz);
  console.log(`${String(hz).padStart(6)} Hz  ${levels[at]!.toFixed(1)} dB`);
}
for (const finding of findings) console.log(`${finding.severity}: ${word(finding).sentence}`);
