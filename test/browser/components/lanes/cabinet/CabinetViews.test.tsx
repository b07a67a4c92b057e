import { act, fireEvent, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import type { ReactNode } from 'react';
import { expect, test } from 'vitest';
import { type Evaluated, evaluateProject } from '../../../../../src/core/design/evaluateProject.ts';
import { laterChecks } from '../../../../../src/core/design/findings/later.ts';
import type { Project } from '../../../../../src/core/document/schema.ts';
import { readColumns } from '../../../../../src/core/measured/readColumns.ts';
import { succeed } from '../../../../../src/core/messages/problem.ts';
import { drawSchematic } from '../../../../../src/core/schematic/drawSchematic.ts';
import { createWorkbench, memoryStorage } from '../../../../../src/state/index.ts';
import { WorkbenchContext } from '../../../../../src/ui/index.ts';
import { CabinetViews } from '../../../../../src/ui/lanes/enclosure/drawing/CabinetViews.tsx';
import { Lanes } from '../../../../../src/ui/lanes/Lanes.tsx';
import '../../plots/openWorkbench.tsx';
import { bandPass, demos, leaning, openMid, withLine, withRadiators } from './handMade.ts';

const NO_LEADS: ReadonlyMap<string, number> = new Map();

/** A store whose findings have those of the cabinet's fit among them, as a page has soon after its first picture. */
const storeFor = (project: Project) =>
  createWorkbench<Evaluated>({
    project,
    evaluate: (edited, previous) => evaluateProject(edited, previous, laterChecks),
    drawSchematic: (parts, ways, previous) => succeed(drawSchematic(parts, ways, previous ?? undefined)),
    storage: memoryStorage(),
    readColumns,
  });

function show(project: Project, widthPx: number, content: ReactNode = <Lanes />) {
  const store = storeFor(project);
  const shown = render(
    <div style={{ width: widthPx }}>
      <WorkbenchContext value={store}>{content}</WorkbenchContext>
    </div>,
  );
  return { store, ...shown, enclosure: () => store.getState().project.enclosure };
}
const views = <CabinetViews heightPx={420} leadsPx={NO_LEADS} />;
const field = (name: string | RegExp) => screen.getByRole('spinbutton', { name });

interface Words {
  readonly text: string;
  readonly box: DOMRect;
}

/** Where the words of the drawing really are: of values the text itself, not the room about it. */
function wordsIn(container: HTMLElement): Words[] {
  const found = container.querySelectorAll(
    '.cabinet svg text, .cabinet-field .quantity-field-value, .cabinet-switch button, .cabinet-mark',
  );
  return [...found].map((element) => {
    const range = document.createRange();
    range.selectNodeContents(element);
    const box = element instanceof SVGElement || element.matches('.cabinet-mark') ? element : range;
    return {
      text: element.textContent || (element.getAttribute('aria-label') ?? ''),
      box: box.getBoundingClientRect(),
    };
  });
}

function overlaps(words: readonly Words[]): string[] {
  return words.flatMap((a, i) =>
    words.slice(i + 1).flatMap((b) => {
      const across = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
      const down = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
      // Half a pixel is how browsers round a box.
      return across > 0.5 && down > 0.5 ? [`${a.text} over ${b.text}`] : [];
    }),
  );
}

const projects = { ...demos, bandPass, withRadiators, leaning, withLine, openMid };

test.each(Object.entries(projects))('no words of the drawing lie over others: %s', async (_, project) => {
  for (const widthPx of [1440, 390]) {
    const { container, unmount } = show(project, widthPx);
    const words = wordsIn(container);
    expect(words.length).toBeGreaterThan(6);
    expect(overlaps(words)).toEqual([]);
    for (const { text, box } of words) {
      expect(box.left, text).toBeGreaterThanOrEqual(0);
      expect(box.right, text).toBeLessThanOrEqual(widthPx + 1);
    }
    await userEvent.click(screen.getByRole('button', { name: /^section at/ }));
    expect(overlaps(wordsIn(container))).toEqual([]);
    unmount();
  }
});

test('words are at least 11 pixels high and handles and values at least 24 wide and high', () => {
  const { container } = show(leaning, 390);
  for (const text of container.querySelectorAll('.cabinet svg text, .cabinet-frame button, .cabinet-hints *')) {
    expect(Number.parseFloat(getComputedStyle(text).fontSize)).toBeGreaterThanOrEqual(11);
  }
  const targets = container.querySelectorAll('.cabinet button, .cabinet [role="slider"], .cabinet [role="spinbutton"]');
  expect(targets.length).toBeGreaterThan(12);
  for (const target of targets) {
    const { width, height } = target.getBoundingClientRect();
    expect(Math.min(width, height), target.outerHTML.slice(0, 80)).toBeGreaterThanOrEqual(24);
  }
});

test('a passive radiator on the front is moved by keys and by dragging, one on the back is only drawn', async () => {
  const { enclosure, container } = show(withRadiators, 440, views);
  const handle = screen.getByRole('button', { name: /^front radiator, .*arrow keys move it/ });
  handle.focus();
  await userEvent.keyboard('{ArrowRight}{Shift>}{ArrowUp}{/Shift}');
  expect(enclosure().passiveRadiators[0]).toMatchObject({ xM: 0.001, yM: 0.095 });
  const scale = handle.getBoundingClientRect().width / 0.148;
  const send = (type: string, clientY: number) =>
    fireEvent(handle, new PointerEvent(type, { bubbles: true, pointerId: 1, button: 0, clientX: 300, clientY }));
  send('pointerdown', 300);
  send('pointermove', 300 - 0.02 * scale);
  send('pointerup', 300 - 0.02 * scale);
  expect(enclosure().passiveRadiators[0]!.yM).toBeCloseTo(0.115, 3);
  expect(screen.queryByRole('button', { name: /^rear pair/ })).toBeNull();
  expect(container.querySelectorAll('.cabinet-hidden .cabinet-radiator')).toHaveLength(2);
});

test('the mouth of a line is moved on the front; its run is said not to be placed', async () => {
  const { enclosure } = show(withLine, 440, views);
  screen.getByRole('button', { name: /^Mouth of the line/ }).focus();
  await userEvent.keyboard('{ArrowUp}');
  expect(enclosure().lines[0]!.end).toMatchObject({ kind: 'open', face: 'front', yM: 0.101 });
  expect(screen.getByText('not to place')).toBeTruthy();
});

test('a board is moved with the bounds of both chambers that meet at it', async () => {
  const { enclosure, store } = show(bandPass, 440, views);
  field('Top of the rear chamber').focus();
  await userEvent.keyboard('{ArrowUp}');
  expect(enclosure().chambers.map(({ volume }) => volume)).toMatchObject([{ topM: 0.201 }, { bottomM: 0.219 }]);
  store.getState().undo();
  expect(enclosure()).toEqual(bandPass.enclosure);
});

test('lean, front, braces, heights and the width at the back are edited in place', async () => {
  const { enclosure } = show(leaning, 440, views);
  const step = async (name: string) => {
    field(name).focus();
    await userEvent.keyboard('{ArrowUp}');
  };
  await step('Lean of the front');
  expect(enclosure().wood.frontLeanDeg).toBeGreaterThan(8);
  await step('Thickness of the front');
  expect(enclosure().wood.frontM).toBeCloseTo(0.026, 9);
  await step('Height of brace 1');
  expect(enclosure().wood.braces.map(({ atM }) => atM)).toEqual([0.361, 0.2, 0.05]);
  await step('Height of the woofer above the bottom');
  expect(enclosure().mounts.find(({ partId }) => partId === 'LS1')!.yM).toBeCloseTo(0.546, 9);
  await userEvent.click(screen.getByRole('button', { name: /^section at/ }));
  await step('Width at the back');
  expect(enclosure().wood.backWidthM).toBeCloseTo(0.201, 9);
});

test('the section stands beside the side view on a wide screen, and cuts through what is picked', () => {
  const { container, store } = show(demos.room, 760, views);
  expect(screen.queryByRole('button', { name: /^section at/ })).toBeNull();
  const magnets = () => container.querySelectorAll('.cabinet-magnet').length;
  // At half height only the edge of the woofer's frame is cut, far from its magnet.
  expect(screen.getByText('cut at 470 mm')).toBeTruthy();
  expect(magnets()).toBe(3);
  act(() => store.getState().select({ kind: 'speaker', id: 'LS1' }));
  expect(screen.getByText('cut at 545 mm')).toBeTruthy();
  expect(magnets()).toBe(4);
});

test('what does not fit is outlined, and its mark says why and picks it', async () => {
  const tight = { ...demos.room, enclosure: { ...demos.room.enclosure, depthM: 0.11 } };
  const { store, container } = show(tight, 440, views);
  const sentences = store.getState().evaluation!.findings.filter(({ code }) => code.startsWith('build.'));
  expect(sentences.length).toBeGreaterThan(0);
  const marks = screen.getAllByRole('button', { name: /^Does not fit: / });
  expect(container.querySelectorAll('.cabinet-fault').length).toBeGreaterThanOrEqual(marks.length);
  marks[0]!.focus();
  const said = await screen.findByRole('status');
  expect(marks[0]!.getAttribute('aria-label')).toContain(said.textContent!.trim());
  await userEvent.click(marks[0]!);
  expect(store.getState().selection).not.toBeNull();
});

test('a stand that brings the tweeter to the ears is offered, and used', async () => {
  const { store } = show(withRadiators, 440, views);
  const { listening, enclosure } = store.getState().project;
  const tweeter = enclosure.mounts.find(({ yM }) => yM === 0.36)!;
  await userEvent.click(screen.getByRole('button', { name: 'use that stand' }));
  expect(store.getState().project.listening.standHeightM + tweeter.yM).toBeCloseTo(listening.heightM, 3);
  expect(screen.queryByRole('button', { name: 'use that stand' })).toBeNull();
});

test('acoustic centres go back with a front that leans', async () => {
  const { enclosure } = show(leaning, 440, views);
  await userEvent.click(screen.getByRole('button', { name: 'move back with the front' }));
  for (const mount of enclosure().mounts) {
    const before = leaning.enclosure.mounts.find(({ partId }) => partId === mount.partId)!;
    const setbackM = Math.tan((8 * Math.PI) / 180) * mount.yM;
    expect(mount.acousticCentreZM).toBeCloseTo(before.acousticCentreZM - setbackM, 9);
  }
  expect(screen.queryByRole('button', { name: 'move back with the front' })).toBeNull();
});
