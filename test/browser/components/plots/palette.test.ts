import '../../../../src/ui/theme.css';
import { afterEach, expect, test } from 'vitest';
import { readPalette } from '../../../../src/ui/plots/palette.ts';

const root = document.documentElement;
const paletteIn = (theme: string) => {
  root.dataset.theme = theme;
  const element = document.body.appendChild(document.createElement('canvas'));
  const palette = readPalette(element);
  const colours = [palette('--paper'), palette('--way-1')];
  element.remove();
  return colours;
};
afterEach(() => {
  delete root.dataset.theme;
});

test('the canvas gets the colours of the chosen theme, resolved', () => {
  // #f3f5f4 and #c03088; #14181b and #d07088.
  expect(paletteIn('light')).toEqual(['rgb(243, 245, 244)', 'rgb(192, 48, 136)']);
  expect(paletteIn('dark')).toEqual(['rgb(20, 24, 27)', 'rgb(208, 112, 136)']);
});

test('without a choice the system decides', () => {
  const dark = window.matchMedia('(prefers-color-scheme: dark)').matches;
  delete root.dataset.theme;
  const element = document.body.appendChild(document.createElement('canvas'));
  expect(readPalette(element)('--ink')).toBe(dark ? 'rgb(238, 242, 240)' : 'rgb(27, 34, 38)');
  element.remove();
});
