import { useWorkbench } from '../../../../useWorkbench.ts';
import { onSection, type SectionDrawing } from '../cabinetDrawing.ts';
import { WoodPieces } from '../profile/WoodPieces.tsx';
import { type Block, braceBoards } from '../shape/braceBoards.ts';

/** The braces that the level cut meets, hatched; their windows are left open where the cut runs through them. */
export function SectionBraces({ drawing, yM }: { readonly drawing: SectionDrawing; readonly yM: number }) {
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const within = ([fromM, toM]: readonly [number, number]) => yM >= fromM && yM <= toM;
  const rect = ({ acrossM, behindM }: Block) => {
    const a = onSection(drawing, acrossM[0], behindM[1]);
    const b = onSection(drawing, acrossM[1], behindM[0]);
    return { x: a.xPx, y: a.yPx, width: Math.max(0, b.xPx - a.xPx), height: Math.max(0, b.yPx - a.yPx) };
  };
  return braceBoards(enclosure).map(({ id, lies, wood, window }) => {
    if (!within(wood.upM)) return null;
    const isOpen = window !== null && within(window.upM);
    return (
      <WoodPieces key={id} whole={rect(wood)} pieces={isOpen ? around(wood, window, lies).map(rect) : [rect(wood)]} />
    );
  });
}

/** What is left of a board round its window in the plane of the cut. */
function around(wood: Block, window: Block, lies: 'level' | 'across' | 'lengthwise'): Block[] {
  const beside = (from: Block): Block[] => [
    { ...from, acrossM: [wood.acrossM[0], window.acrossM[0]] },
    { ...from, acrossM: [window.acrossM[1], wood.acrossM[1]] },
  ];
  const before: Block[] = [
    { ...wood, behindM: [wood.behindM[0], window.behindM[0]] },
    { ...wood, behindM: [window.behindM[1], wood.behindM[1]] },
  ];
  if (lies === 'across') return beside(wood);
  return lies === 'lengthwise' ? before : [...before, ...beside({ ...wood, behindM: window.behindM })];
}
