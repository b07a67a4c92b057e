import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { chromiumPath } from '../../.ci/find-chromium.mjs';

let empty = '';
let folder = '';
const program = (name: string, mode: number): string => {
  const path = join(folder, name);
  writeFileSync(path, '#!/bin/sh\n');
  chmodSync(path, mode);
  return path;
};

beforeAll(() => {
  empty = mkdtempSync(join(tmpdir(), 'conewright-'));
  folder = mkdtempSync(join(tmpdir(), 'conewright-'));
  program('google-chrome', 0o755);
});
afterAll(() => {
  for (const path of [empty, folder]) rmSync(path, { recursive: true });
});

it('takes what CHROMIUM_PATH names before anything else', () => {
  const named = program('own-build', 0o755);
  expect(chromiumPath({ CHROMIUM_PATH: named, PATH: folder })).toBe(named);
});

it('says so when CHROMIUM_PATH names nothing that can be run', () => {
  expect(() => chromiumPath({ CHROMIUM_PATH: join(empty, 'none'), PATH: folder })).toThrow('CHROMIUM_PATH is set to');
  expect(() => chromiumPath({ CHROMIUM_PATH: folder, PATH: folder })).toThrow('CHROMIUM_PATH is set to');
});

it('finds the usual names on PATH, and null where there is none', () => {
  expect(chromiumPath({ PATH: [empty, folder].join(delimiter) })).toBe(join(folder, 'google-chrome'));
  expect(chromiumPath({ PATH: empty })).toBeNull();
  expect(chromiumPath({})).toBeNull();
});
