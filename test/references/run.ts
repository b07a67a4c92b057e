// `npm run references`: every case of the file that REFERENCE_CASES names (default: the project's copy) against the
// core, through the adapters. Exit 1 on any failure.
import { resolve } from 'node:path';
import { loadAdapters, loadCases, OWN_CASES, runReferences } from './harness.ts';
import { report } from './report.ts';

const named = process.env.REFERENCE_CASES;
const cases = loadCases(named === undefined || named === '' ? OWN_CASES : resolve(named));
const { adapters, broken } = await loadAdapters();
const outcomes = runReferences(adapters, cases);
for (const reason of broken) console.log(`An adapter could not be loaded: ${reason}`);
console.log(report(outcomes));
if (broken.length > 0 || outcomes.some((outcome) => outcome.kind === 'failed')) process.exitCode = 1;
