// Runs before start, test and check: installs from the lock file when needed, with nothing but Node's own modules.
// npm writes node_modules/.package-lock.json last, so an install that broke off counts as none.
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const changed = (path) => (existsSync(path) ? statSync(path).mtimeMs : 0);

const installed = changed(join(root, 'node_modules', '.package-lock.json'));
if (installed === 0 || installed < changed(join(root, 'package-lock.json'))) {
  console.log('Installing the packages that the lock file names (half a minute or so) ...');
  const options = { cwd: root, stdio: 'inherit', env: { ...process.env, PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD: '1' } };
  const result = process.env.npm_execpath
    ? spawnSync(process.execPath, [process.env.npm_execpath, 'ci'], options)
    : spawnSync('npm', ['ci'], { ...options, shell: process.platform === 'win32' });
  if (result.status !== 0) process.exit(result.status ?? 1);
}
