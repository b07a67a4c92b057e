import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { wayStyle } from '../../src/plot/index.ts';

// Simulation of colour vision: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A physiologically-based model for
// simulation of color vision deficiency", IEEE Trans. Vis. Comput. Graph. 15 (2009), severity 1.0.
const VISIONS: Readonly<Record<string, readonly number[]>> = {
  usual: [1, 0, 0, 0, 1, 0, 0, 0, 1],
  protan: [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998],
  deutan: [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.01182, 0.04294, 0.968881],
  tritan: [1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.3039],
};
const css = readFileSync(new URL('../../src/ui/theme.css', import.meta.url), 'utf8');
const themes = { light: 0, dark: 1 } as const;
type Theme = (typeof themes)[keyof typeof themes];
type Rgb = readonly [number, number, number];
const linear = (theme: Theme, name: string): Rgb => {
  const pair = new RegExp(`${name}: light-dark\\(#([0-9a-f]{6}), #([0-9a-f]{6})\\)`).exec(css);
  const hex = pair?.[1 + theme];
  if (hex === undefined) throw new Error(`${name} is not in the theme.`);
  const channel = (at: number) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  };
  return [channel(0), channel(2), channel(4)];
};
const luminance = ([r, g, b]: Rgb) => 0.2126 * r + 0.7152 * g + 0.0722 * b;
const contrast = (a: Rgb, b: Rgb) => {
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return ((high ?? 0) + 0.05) / ((low ?? 0) + 0.05);
};
const seen = ([r, g, b]: Rgb, m: readonly number[]): Rgb => {
  const row = (at: number) => Math.min(1, Math.max(0, (m[at] ?? 0) * r + (m[at + 1] ?? 0) * g + (m[at + 2] ?? 0) * b));
  return [row(0), row(3), row(6)];
};
const lab = (rgb: Rgb): Rgb => {
  const f = (t: number) => (t > 0.008856 ? Math.cbrt(t) : 7.787 * t + 16 / 116);
  const [r, g, b] = rgb;
  const x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
  const y = f(luminance(rgb));
  const z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
};
const distance = (a: Rgb, b: Rgb, m: readonly number[]) => {
  const [p, q] = [lab(seen(a, m)), lab(seen(b, m))];
  return Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
};

test.each(Object.entries(themes))('text colours reach 4.5 to 1 on page and panel (WCAG 2.1, 1.4.3): %s', (_, theme) => {
  const names = ['--ink', '--soft', '--accent', '--danger', '--caution', '--good', '--ghost', '--sum'];
  const ways = [1, 2, 3, 4, 5, 6].map((way) => `--way-${way}`);
  for (const name of [...names, ...ways]) {
    for (const ground of ['--paper', '--card']) {
      expect(contrast(linear(theme, name), linear(theme, ground)), `${name} on ${ground}`).toBeGreaterThanOrEqual(4.5);
    }
  }
});

// Bounds measured for this palette; the digest of published palettes of six reaches 20 to 30 by the same distance (CIE76).
test.each(Object.entries(themes))('ways differ for four kinds of colour vision: %s', (_, theme) => {
  const colours = ['--sum', ...[1, 2, 3, 4, 5, 6].map((way) => `--way-${way}`)].map((name) => linear(theme, name));
  for (const [vision, matrix] of Object.entries(VISIONS)) {
    for (const [i, a] of colours.entries()) {
      for (const [j, b] of colours.entries()) {
        if (j <= i) continue;
        const firstThree = i > 0 && j <= 3;
        expect(distance(a, b, matrix), `${vision}: ${i} and ${j}`).toBeGreaterThan(firstThree ? 34 : 20);
      }
    }
  }
});

test('six ways have six dash patterns, and none is solid like the sum', () => {
  const dashes = [0, 1, 2, 3, 4, 5].map((way) => wayStyle(way).dash);
  expect(new Set(dashes.map(String)).size).toBe(6);
  expect(dashes.every((dash) => dash.length > 0)).toBe(true);
});
