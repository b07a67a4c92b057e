// Finds the Chromium or Chrome that the browser tests drive. Order: CHROMIUM_PATH, the usual names on PATH, and, where
// that is possible without asking anybody (Debian, as root), the distribution's own package.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];

/** Arguments for every launch; `--headless` comes from the drivers. */
export const CHROMIUM_ARGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

const isExecutable = (path) => {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
};

/** The browser's path, or null where there is none. Throws where CHROMIUM_PATH names something that cannot be run. */
export function chromiumPath(env = process.env) {
  if (env.CHROMIUM_PATH) {
    if (isExecutable(env.CHROMIUM_PATH)) return env.CHROMIUM_PATH;
    throw new Error(`CHROMIUM_PATH is set to ${env.CHROMIUM_PATH}, which is not a program that can be run.`);
  }
  for (const folder of (env.PATH ?? '').split(delimiter)) {
    if (folder === '') continue;
    for (const name of NAMES) {
      const path = join(folder, name);
      if (isExecutable(path)) return path;
    }
  }
  return null;
}

const aptGet = (...args) =>
  spawnSync('apt-get', args, { stdio: 'inherit', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } });

/** The browser's path; installs one first where that is possible, and else throws a sentence that says what to do. */
export function findOrInstallChromium() {
  const found = chromiumPath();
  if (found !== null) return found;
  if (existsSync('/etc/debian_version') && process.getuid?.() === 0) {
    console.log('No Chromium was found: installing the one of the distribution (about 80 MB) ...');
    aptGet('update');
    aptGet('install', '-y', '--no-install-recommends', 'chromium');
    const installed = chromiumPath();
    if (installed !== null) return installed;
  }
  throw new Error(
    'The browser tests need Chromium or Chrome, and none was found. Install one with the package manager of this ' +
      'system, or set CHROMIUM_PATH to the program.',
  );
}
