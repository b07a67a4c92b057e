import { useWorkbench } from '../../../../useWorkbench.ts';
import { onSide, type SideDrawing } from '../cabinetDrawing.ts';
import { WoodPieces } from '../profile/WoodPieces.tsx';
import { type BraceBoard, braceBoards } from '../shape/braceBoards.ts';

/** The braces cut along the cabinet's middle: hatched wood, nothing where they are open; lengthwise ones stand behind the cut, dashed. */
export function BraceSide({ drawing }: { readonly drawing: SideDrawing }) {
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const rect = (behindM: readonly [number, number], upM: readonly [number, number]) => {
    const a = onSide(drawing, behindM[0], upM[1]);
    const b = onSide(drawing, behindM[1], upM[0]);
    return { x: a.xPx, y: a.yPx, width: Math.max(0, b.xPx - a.xPx), height: Math.max(0, b.yPx - a.yPx) };
  };
  return (
    <g className="cabinet-brace">
      {braceBoards(enclosure).map((board) => {
        const { wood, window } = board;
        if (board.lies === 'lengthwise')
          return (
            <g key={board.id}>
              <rect className="cabinet-hidden-edge" {...rect(wood.behindM, wood.upM)} />
              {window ? <rect className="cabinet-hidden-edge" {...rect(window.behindM, window.upM)} /> : null}
            </g>
          );
        return (
          <WoodPieces
            key={board.id}
            whole={rect(wood.behindM, wood.upM)}
            pieces={cutPieces(board).map(({ behindM, upM }) => rect(behindM, upM))}
          />
        );
      })}
    </g>
  );
}

/** What of a brace the cut along the middle meets: its window is in its middle. */
function cutPieces({ wood, window, lies }: BraceBoard) {
  if (!window) return [wood];
  const axis = lies === 'level' ? 'behindM' : 'upM';
  return [
    { ...wood, [axis]: [wood[axis][0], window[axis][0]] as const },
    { ...wood, [axis]: [window[axis][1], wood[axis][1]] as const },
  ];
}
