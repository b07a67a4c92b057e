import { fireEvent, screen, waitFor } from '@testing-library/react';
import { expect, test } from 'vitest';
import type { Project } from '../../../../src/core/document/schema.ts';
import { SealedWish } from '../../../../src/ui/lanes/enclosure/SealedWish.tsx';
import { useWorkbench } from '../../../../src/ui/useWorkbench.ts';
import { demo, show, testStore } from '../plots/openWorkbench.tsx';

const middle = demo.enclosure.chambers.find(({ id }) => id === 'middle')!;
const Wish = () => (
  <SealedWish
    chamber={useWorkbench((s) => s.project.enclosure.chambers.find(({ id }) => id === middle.id) ?? middle)}
  />
);
const withMid = (entered: object): Project => ({
  ...demo,
  drivers: demo.drivers.map((d) => (d.role === 'mid' ? { ...d, entered: { ...d.entered, ...entered } } : d)),
});

test('the volume for a flat sealed box is used by a press', async () => {
  const store = testStore();
  show(store, <Wish />);
  fireEvent.click(screen.getByRole('button', { name: 'use that volume' }));
  const qtc = () => store.getState().evaluation?.keyFigures.chambers.find(({ id }) => id === middle.id)?.sealed?.qtc;
  await waitFor(() => expect(qtc()).toBeCloseTo(Math.SQRT1_2, 2));
});

test('where the chamber cannot become so, what is in the way is said', () => {
  const { vasM3 } = demo.drivers.find(({ role }) => role === 'mid')!.entered;
  const loose = { vasM3: 40 * vasM3!, mmsKg: undefined, blTm: undefined, cmsMPerN: undefined };
  const { container } = show(testStore(withMid(loose)), <Wish />);
  expect(container.textContent).toMatch(/Chamber “mid chamber” would have to be .* gross .* chamber “woofer chamber”/);
  expect(screen.queryByRole('button', { name: 'use that volume' })).toBeNull();
});
