import { useRef, useState } from 'react';
import type { WishedBox } from '../../../../core/design/deeperCabinetFor.ts';
import { sealedBoxFor } from '../../../../core/design/sealedBoxFor.ts';
import { ventedBoxFor } from '../../../../core/design/ventedBoxFor.ts';
import type { Chamber, Project } from '../../../../core/document/schema.ts';
import type { Problem } from '../../../../core/messages/problem.ts';
import { dispatchHere } from '../../../fields/dispatchHere.ts';
import { useWorkbenchStore } from '../../../useWorkbenchStore.ts';

const NONE: readonly Problem[] = [];

/** Edits of a chamber that the map asks for: a drag is one gesture, worked out from where it began; what stands against a wish is said. */
export function useMapMoves(chamber: Chamber) {
  const store = useWorkbenchStore();
  const began = useRef<Project | null>(null);
  const [problems, setProblems] = useState(NONE);
  // What was asked for last, for the other ways to it.
  const [wish, setWish] = useState<WishedBox | null>(null);
  const move = (volumeM3: number, tuningHz: number): void => {
    if (began.current === null) {
      store.getState().beginGesture();
      began.current = store.getState().project;
    }
    setWish({ volumeM3, tuningHz });
    const from = portIn(began.current, chamber.id) ? began.current : store.getState().project;
    const start = from.enclosure.chambers.find(({ id }) => id === chamber.id);
    if (start === undefined) return;
    const box = ventedBoxFor(from, start, { volumeM3, tuningHz });
    if (!box.ok) {
      setProblems(box.problems);
      return;
    }
    const refused = dispatchHere(store, box.value.command);
    setProblems(refused.length > 0 ? refused : box.value.doubts);
  };
  const commit = (): void => {
    began.current = null;
    store.getState().endGesture();
  };
  const cancel = (): void => {
    began.current = null;
    store.getState().cancelGesture();
    setProblems(NONE);
  };
  const seal = (volumeM3: number): void => {
    const { project } = store.getState();
    const present = project.enclosure.chambers.find(({ id }) => id === chamber.id);
    if (present === undefined) return;
    const box = sealedBoxFor(project, present, volumeM3);
    setWish({ volumeM3, tuningHz: null });
    setProblems(box.ok ? dispatchHere(store, box.value.command) : box.problems);
  };
  const settle = (): void => {
    setProblems(NONE);
    setWish(null);
  };
  return { problems, wish, settle, move, commit, cancel, seal };
}

const portIn = ({ enclosure }: Project, chamberId: string): boolean =>
  enclosure.ports.some((port) => port.chamberId === chamberId);
