import { useWorkbench } from '../../useWorkbench.ts';
import { useWorkbenchStore } from '../../useWorkbenchStore.ts';
import { figureText } from '../figureText.ts';
import { useAlike } from '../useAlike.ts';
import { useWays } from '../useWays.ts';
import { wayColour } from '../wayColour.ts';
import { type CabinetDrawing, onSide } from './cabinetDrawing.ts';
import { tuningWords } from './chamberWords.ts';
import { DriverSide } from './DriverDrawing.tsx';
import { PortSide } from './PortSide.tsx';
import { partitions, sideChambers } from './sideChambers.ts';

/** Below this height a chamber's outline holds one line of text only. */
const TWO_LINES_PX = 40;

/** From a chamber's inside to words beside it, and from there to the words. */
const LEAD_PX = 12;
const LEAD_GAP_PX = 4;

/** The cabinet cut along its middle, front at the left: walls, chambers with their air in words, drivers, ports. */
export function SideView({ drawing }: { readonly drawing: CabinetDrawing }) {
  const store = useWorkbenchStore();
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const ways = useWays();
  const figures = useAlike((s) => s.evaluation?.keyFigures.chambers);
  const system = useWorkbench((s) => s.settings.units);
  const selection = useWorkbench((s) => s.selection);
  const { side } = drawing;
  const rect = (frontM: number, backM: number, bottomM: number, topM: number) => {
    const a = onSide(drawing, frontM, topM);
    const b = onSide(drawing, backM, bottomM);
    return { x: a.xPx, y: a.yPx, width: Math.max(0, b.xPx - a.xPx), height: Math.max(0, b.yPx - a.yPx) };
  };
  const { panelM, depthM, heightM } = enclosure;
  const chambers = sideChambers(enclosure);
  const indexOf = (chamberId: string) => {
    const inside = enclosure.mounts.filter((mount) => mount.chamberId === chamberId).map((mount) => mount.partId);
    return ways.find((way) => inside.includes(way.speakerId))?.index ?? null;
  };
  return (
    <g>
      <text className="cabinet-title" x={side.leftPx + side.widthPx / 2} y={15}>
        side
      </text>
      <rect className="cabinet-wood" {...rect(0, depthM, 0, heightM)} rx={2} />
      <rect className="cabinet-hollow" {...rect(panelM, depthM - panelM, panelM, heightM - panelM)} />
      {chambers.map((chamber) => (
        // The chips below the drawing pick chambers by keyboard.
        <rect
          key={chamber.id}
          className="cabinet-air"
          style={wayColour(indexOf(chamber.id))}
          data-stated={chamber.stated ? '' : undefined}
          data-picked={selection?.kind === 'chamber' && selection.id === chamber.id ? '' : undefined}
          {...rect(chamber.frontM, chamber.backM, chamber.bottomM, chamber.topM)}
          onPointerDown={() => store.getState().select({ kind: 'chamber', id: chamber.id })}
        />
      ))}
      {partitions(enclosure).map((wall) => (
        <rect
          key={`${wall.frontM} ${wall.bottomM} ${wall.topM}`}
          className="cabinet-partition"
          {...rect(wall.frontM, wall.backM, wall.bottomM, wall.topM)}
        />
      ))}
      {ways.map((way) => (
        <DriverSide key={way.speakerId} drawing={drawing} way={way} />
      ))}
      {enclosure.ports.map((port) => (
        <PortSide key={port.id} drawing={drawing} port={port} />
      ))}
      {chambers.map((chamber) => {
        const box = rect(chamber.frontM, chamber.backM, chamber.bottomM, chamber.topM);
        const figure = figures?.find((entry) => entry.id === chamber.id);
        const words = tuningWords(figure, system);

        const hollow = rect(chamber.backM + panelM, depthM - panelM, chamber.bottomM, chamber.topM);
        const insidePx = box.width * INSIDE_SHARE;
        const besidePx = hollow.width - LEAD_PX - LEAD_GAP_PX;
        const volume = figure ? figureText(figure.netM3, 'volume', system) : '–';
        const needsPx = Math.max(volume.length * CHARACTER_PX, words.length * SMALL_CHARACTER_PX);
        const beside = needsPx > insidePx && besidePx > insidePx;
        const roomPx = beside ? besidePx : insidePx;
        const x = beside ? hollow.x + LEAD_PX + LEAD_GAP_PX : box.x + box.width * 0.6;
        const y = box.y + box.height / 2;
        // Where there is no room for words at all the driver's card still says them.
        if (volume.length * CHARACTER_PX > roomPx) return null;
        const fits = words.length * SMALL_CHARACTER_PX <= roomPx;
        const two = words !== '' && fits && box.height >= TWO_LINES_PX;
        return (
          <g key={chamber.id} className="cabinet-words" data-beside={beside ? '' : undefined}>
            {beside ? (
              <>
                <circle className="cabinet-words-from" cx={box.x + box.width - LEAD_PX / 2} cy={y} r={2} />
                <path
                  className="cabinet-words-lead"
                  d={`M${box.x + box.width - LEAD_PX / 2},${y}H${hollow.x + LEAD_PX}`}
                />
              </>
            ) : null}
            <text className="cabinet-volume" x={x} y={y} dy={two ? '-0.2em' : '0.35em'}>
              {figure ? netWords(volume, roomPx) : volume}
            </text>
            {two ? (
              <text className="cabinet-tuning" x={x} y={y} dy="1.1em">
                {words}
              </text>
            ) : null}
          </g>
        );
      })}
    </g>
  );
}

/** About the width of a character of the volume's bold type. */
const CHARACTER_PX = 7.2;
/** The same for the smaller line below it. */
const SMALL_CHARACTER_PX = 5.6;
/** Of a chamber's width what its words may take up: they stand behind the driver, up to the back wall. */
const INSIDE_SHARE = 0.8;

/** "24.6 L net", without the last word where it would run over the walls. */
const netWords = (volume: string, roomPx: number): string =>
  (volume.length + 4) * CHARACTER_PX <= roomPx ? `${volume} net` : volume;
