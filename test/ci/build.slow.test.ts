import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { afterAll, beforeAll, expect, it } from 'vitest';

// The static folder must work from any path of any plain file server: every reference in it is relative.
const root = fileURLToPath(new URL('../..', import.meta.url));
let folder = '';
const text = (name: string): string => readFileSync(join(folder, name), 'utf8');

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'conewright-'));
  const output = { outDir: folder, emptyOutDir: true };
  // Vitest says `test` here, and the app would be built with React's development version.
  process.env.NODE_ENV = 'production';
  await build({ configFile: join(root, 'vite.config.ts'), root, logLevel: 'error', mode: 'production', build: output });
  process.env.NODE_ENV = 'test';
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true }));

it('refers from its page to files that are there, by relative paths alone', () => {
  const references = [...text('index.html').matchAll(/\b(?:src|href)="([^"]*)"/g)].map(([, reference]) => reference!);
  expect(references.length).toBeGreaterThanOrEqual(3);
  for (const reference of references) {
    expect(reference).toMatch(/^\.\//);
    expect(existsSync(join(folder, reference)), reference).toBe(true);
  }
});

it('loads nothing from elsewhere and runs nothing inline', () => {
  const page = text('index.html').replaceAll('&#39;', "'");
  expect(page).toMatch(/<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self';/);
  expect(page).not.toMatch(/unsafe|https?:|<script>|<style|\son\w+=/);
});

it('can be installed and works offline from where it stands', () => {
  const manifest = JSON.parse(text('manifest.webmanifest'));
  expect(manifest).toMatchObject({ name: 'Conewright', start_url: './', scope: './' });
  for (const { src } of manifest.icons) expect(existsSync(join(folder, src)), src).toBe(true);
  const worker = text('sw.js');
  for (const name of readdirSync(join(folder, 'assets')).filter((file) => /\.(js|css)$/.test(file)))
    expect(worker).toContain(`assets/${name}`);
  expect(worker).not.toMatch(/url:"\//);
});
