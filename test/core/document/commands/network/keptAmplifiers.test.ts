import { expect, it } from 'vitest';
import { keptAmplifiers } from '../../../../../src/core/document/commands/network/keptAmplifiers.ts';
import { amplifier, inductor, speaker } from '../../twoWay.ts';

const present = [amplifier('V1', ['in', '0']), amplifier('V2', ['hi', '0']), inductor('L1', ['in', 'w'])];

it('keeps the amplifiers whose node the text has, where it names none itself', () => {
  const text = [inductor('L2', ['in', 'w']), speaker('LS1', ['w', '0'], 'woofer')];
  expect(keptAmplifiers(present, text)).toEqual([present[0]]);
  expect(keptAmplifiers(present, [...text, inductor('L3', ['hi', 'w'])])).toEqual(present.slice(0, 2));
  expect(keptAmplifiers(present, [...text, amplifier('V9', ['in', '0'])])).toEqual([]);
  expect(keptAmplifiers(present, [inductor('L2', ['a', 'b'])])).toEqual([]);
});
