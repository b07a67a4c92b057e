import { quantityText } from '../../../../../core/units/formatQuantity.ts';
import { showInField } from '../../../../fields/showInField.ts';
import { useWorkbench } from '../../../../useWorkbench.ts';
import { useAlike } from '../../../useAlike.ts';
import { useRemPx } from '../../../useRemPx.ts';
import { useWays } from '../../../useWays.ts';
import type { Box, SideDrawing } from '../cabinetDrawing.ts';
import { lineRoom } from '../side/lineRoom.ts';
import { bodiesInSide } from './bodiesInSide.ts';
import { ChamberWords } from './ChamberWords.tsx';
import { chamberLabels } from './chamberLabels.ts';
import { boxAbout, placeLabels } from './placeLabels.ts';

const NONE: readonly Box[] = [];
const CHARACTER_PX = 5.9;
const LINE_PX = 15;

/** The words inside the side view: air and tuning of each chamber, length of each line, clear of what is drawn and of `taken`. */
export function SideWords({
  drawing,
  taken = NONE,
  enlarged = 1,
}: {
  readonly drawing: SideDrawing;
  readonly taken?: readonly Box[];
  /** How much larger than in the lanes its type is. */
  readonly enlarged?: number;
}) {
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const ways = useWays();
  const figures = useAlike((s) => s.evaluation?.keyFigures.chambers);
  const system = useWorkbench((s) => s.settings.units);
  const typeScale = (enlarged * useRemPx()) / 16;
  const bodies = [...taken, ...bodiesInSide(drawing, enclosure, ways)];
  const lines = placeLabels(
    enclosure.lines.map((line) => {
      const room = lineRoom(drawing, line, enclosure);
      const length = quantityText(showInField(line.lengthM, 'length', system));
      const x = room.leftPx + room.widthPx / 2;
      const said = [
        [`line ${length}`, 'not to place'],
        [length, 'not to place'],
      ];
      return {
        key: line.id,
        options: said.flatMap((words) => {
          const widthPx = Math.max(...words.map((text) => text.length)) * CHARACTER_PX * typeScale + 6;
          return [0.5, 0.3, 0.7, 0.15, 0.85].map((share) => ({
            words,
            box: boxAbout(x, room.topPx + room.heightPx * share, widthPx, 2 * LINE_PX * typeScale),
          }));
        }),
      };
    }),
    bodies,
  );
  const chambers = placeLabels(chamberLabels(drawing, enclosure, figures, system, typeScale), [
    ...bodies,
    ...[...lines.values()].map(({ box }) => box),
  ]);
  return (
    <>
      {[...lines].map(([key, { words, box }]) => (
        <g key={key} className="cabinet-words">
          <rect
            className="cabinet-words-back"
            x={box.leftPx}
            y={box.topPx}
            width={box.widthPx}
            height={box.heightPx}
            rx={3}
          />
          {words.map((text, k) => (
            <text
              key={text}
              className="cabinet-tuning"
              x={box.leftPx + box.widthPx / 2}
              y={box.topPx + (k + 0.5) * (box.heightPx / 2)}
              dy="0.35em"
            >
              {text}
            </text>
          ))}
        </g>
      ))}
      <ChamberWords labels={chambers} />
    </>
  );
}
