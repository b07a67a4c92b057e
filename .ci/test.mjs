// `npm test` and, with --quick, `npm run check`. Cheap steps first; stops at the first one that fails. The last line is
// `N passed, N failed`, added up from the runners' own JSON reports.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { addUp } from './add-up.mjs';
import { findOrInstallChromium } from './find-chromium.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const reports = join(root, 'node_modules', '.cache', 'reports', String(process.pid));
const quick = process.argv.includes('--quick');
const total = { passed: 0, failed: 0, skipped: 0 };

/** A step without a report (lint, types, build) counts no tests; a runner that ran none or left no report fails. */
function step(title, [pkg, file], args, { report, env } = {}) {
  console.log(`\n== ${title}`);
  const started = performance.now();
  const result = spawnSync(process.execPath, [join(root, 'node_modules', pkg, file), ...args], {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ...env },
  });
  let ok = result.status === 0;
  if (report !== undefined) {
    const counts = existsSync(report) ? addUp(JSON.parse(readFileSync(report, 'utf8'))) : null;
    for (const key of Object.keys(total)) total[key] += counts?.[key] ?? 0;
    if (ok && (counts === null || counts.passed === 0 || counts.failed > 0)) {
      console.error(`${title}: the runner ended well, yet its report counts no passed test or a failed one.`);
      ok = false;
    }
  }
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  console.log(`== ${title}: ${ok ? 'ok' : 'failed'}, ${seconds} s`);
  if (!ok) finish(1);
}

function finish(code) {
  rmSync(reports, { recursive: true, force: true });
  const skipped = total.skipped > 0 ? `, ${total.skipped} skipped` : '';
  console.log(`\n${total.passed} passed, ${total.failed} failed${skipped}`);
  process.exit(code);
}

function vitest(title, project, env) {
  const report = join(reports, `${project}.json`);
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const args = ['run', '--config', 'test/vitest.config.ts', '--project', project, ...reporters];
  step(title, ['vitest', 'vitest.mjs'], args, { report, env });
}

mkdirSync(reports, { recursive: true });
step('format and lint', ['@biomejs/biome', 'bin/biome'], ['check', '--error-on-warnings', '.']);
step('types', ['typescript', 'bin/tsc'], ['-b']);
vitest('Node tests', 'node', { CONEWRIGHT_QUICK: quick ? '1' : '' });
if (quick) finish(0);

let chromium;
try {
  chromium = findOrInstallChromium();
} catch (error) {
  console.error(`\n${error.message}`);
  finish(1);
}
const env = { CHROMIUM_PATH: chromium };
vitest('component tests', 'browser', env);
step('build', ['vite', 'bin/vite.js'], ['build']);
const report = join(reports, 'journeys.json');
step('browser journeys', ['@playwright/test', 'cli.js'], ['test', '--config', 'test/playwright.config.ts'], {
  report,
  env: { ...env, PLAYWRIGHT_JSON_OUTPUT_FILE: report },
});
finish(0);
