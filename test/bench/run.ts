// `npm run bench`: measures the stated figures of speed and prints them beside their targets. `-- --json FILE` writes
// them too. Exit 1 when one of them could not be measured; a missed target is told, not punished.
import { writeFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { parseArgs } from 'node:util';
import type { BuiltApp } from './builtApp.ts';
import { CLAIMS, type Figure, figure, type Measured } from './figure.ts';

const { values } = parseArgs({ options: { json: { type: 'string' } } });
const figures: Figure[] = [];

/** Runs one part of the bench; its failure leaves its figures unmeasured and the others as they are. */
async function part(title: string, measure: () => Measured | Promise<Measured>): Promise<void> {
  console.log(`\n${title} (machine load ${loadavg()[0]!.toFixed(2)} on ${cpus().length} cores)`);
  try {
    const measured = await measure();
    figures.push(...measured.figures);
    for (const note of measured.notes) console.log(`  ${note}`);
  } catch (error) {
    const [reason] = (error instanceof Error ? error.message : String(error)).split('\n');
    console.log(`  could not be measured: ${reason}`);
  }
}

// Each part is brought in when its turn comes: one that cannot be loaded leaves the others as they are.
await part('network sweep', async () => (await import('./sweep.ts')).sweepFigures());
await part('full evaluation', async () => (await import('./evaluation.ts')).evaluationFigures());
await part('crossover search and builds', async () => (await import('./crossover.ts')).crossoverFigures());
let app: BuiltApp | undefined;
await part('build', async () => {
  app = await (await import('./builtApp.ts')).openBuiltApp();
  return { figures: [], notes: ['built and served'] };
});
const built = (): BuiltApp => {
  if (app === undefined) throw new Error('the app could not be built or opened');
  return app;
};
await part('first picture', async () => (await import('./bundle.ts')).bundleFigures(built()));
await part('edit to paint', async () => (await import('./paint.ts')).paintFigures(built()));
await app?.close();

const all = CLAIMS.map(({ id }) => figures.find((measured) => measured.id === id) ?? figure(id, null));
const cell = (value: number | null): string =>
  value === null ? 'not measured' : Number(value.toPrecision(4)).toString();
console.log(`\n${'figure'.padEnd(24)}${'measured'.padStart(14)}${'target'.padStart(12)}  `);
for (const { id, value, unit, target, better, holds } of all) {
  const aim = target === null ? 'none' : `${better === 'higher' ? '≥' : '≤'} ${target}`;
  const verdict = value === null ? 'not measured' : target === null ? '' : holds ? 'holds' : 'MISSED';
  console.log(`${id.padEnd(24)}${cell(value).padStart(14)}${aim.padStart(12)}  ${verdict.padEnd(14)}${unit}`);
}
if (values.json !== undefined) writeFileSync(values.json, `${JSON.stringify({ figures: all }, null, 2)}\n`);
process.exit(all.every(({ value }) => value !== null) ? 0 : 1);
