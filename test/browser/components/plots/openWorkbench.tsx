import { cleanup, render } from '@testing-library/react';
import type { ReactNode } from 'react';
import { afterEach } from 'vitest';
import type { StoreApi } from 'zustand';
import readingRoom from '../../../../demo-data/reading-room/reading-room.conewright.json';
import { type Evaluated, evaluateProject } from '../../../../src/core/design/evaluateProject.ts';
import type { Project } from '../../../../src/core/document/schema.ts';
import { readColumns } from '../../../../src/core/measured/readColumns.ts';
import { succeed } from '../../../../src/core/messages/problem.ts';
import { drawSchematic } from '../../../../src/core/schematic/drawSchematic.ts';
import { createWorkbench, memoryStorage, type Workbench } from '../../../../src/state/index.ts';
import { WorkbenchContext } from '../../../../src/ui/index.ts';
import '../../../../src/ui/theme.css';

afterEach(cleanup);

export const demo = readingRoom as unknown as Project;

/** A store over the real core with the three-way demonstration, or another project. */
export const testStore = (project: Project = demo): StoreApi<Workbench> =>
  createWorkbench<Evaluated>({
    project,
    evaluate: evaluateProject,
    drawSchematic: (parts, ways, previous) => succeed(drawSchematic(parts, ways, previous ?? undefined)),
    storage: memoryStorage(),
    readColumns,
  });

/** Renders a part of the screen over a store, in a box of a plot's size. */
export function show(store: StoreApi<Workbench>, content: ReactNode) {
  return render(
    <div style={{ width: 800, height: 320, display: 'grid' }}>
      <WorkbenchContext value={store}>{content}</WorkbenchContext>
    </div>,
  );
}
