import { useId } from 'react';
import type { SheetPlan, SheetRectangle } from '../../../core/build/sheets/index.ts';
import type { UnitSystem } from '../../../core/units/quantityKind.ts';
import { sizeText, sizeWords } from '../read/sizeWords.ts';
import { partLabel } from './partLabel.ts';
import { useBoxWidth } from './useBoxWidth.ts';

export interface PartName {
  readonly mark: string;
  readonly name: string;
}

/** Type as large as this on the screen; drawings that are wider than `FULL_PX` let it grow with them. */
const TYPE_PX = 12;
const FULL_PX = 640;

const mm = (m: number): number => m * 1000;

/** One board to scale, in millimetres: parts with mark, name and size, off-cuts hatched, the grain's direction below. */
export function SheetDrawing({
  plan,
  nameOf,
  grained,
  system,
  label,
}: {
  readonly plan: SheetPlan;
  readonly nameOf: (partId: string) => PartName;
  readonly grained: boolean;
  readonly system: UnitSystem;
  readonly label: string;
}) {
  const [box, widthPx] = useBoxWidth<HTMLDivElement>();
  const hatch = useId();
  const [length, width] = [mm(plan.lengthM), mm(plan.widthM)];
  // Two lines of type beside the board decide how much of the drawing is left for it.
  const perPx = length / Math.max(120, Math.min(widthPx, FULL_PX) - 3 * TYPE_PX);
  const type = TYPE_PX * perPx;
  const edge = 1.8 * type;
  const stroke = 1.2 * perPx;
  const rectangle = ({ xM, yM, lengthM, widthM }: SheetRectangle) => ({
    x: mm(xM),
    y: mm(yM),
    width: mm(lengthM),
    height: mm(widthM),
  });
  return (
    <div ref={box} className="sheet-drawing">
      <svg
        viewBox={`${-edge} ${-edge} ${length + edge + stroke} ${width + 2 * edge}`}
        role="img"
        aria-label={label}
        fontSize={type}
        strokeWidth={stroke}
      >
        <defs>
          <pattern
            id={hatch}
            width={9 * perPx}
            height={9 * perPx}
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <path className="sheet-hatch" d={`M0,0v${9 * perPx}`} />
          </pattern>
        </defs>
        <rect className="sheet-board" x="0" y="0" width={length} height={width} />
        {plan.offCuts.map((offCut) => (
          <rect
            key={`${offCut.xM} ${offCut.yM}`}
            className="sheet-off-cut"
            fill={`url(#${hatch})`}
            {...rectangle(offCut)}
          />
        ))}
        {plan.parts.map((part) => {
          const { mark, name } = nameOf(part.partId);
          const at = rectangle(part);
          const sides = part.rotated ? [part.widthM, part.lengthM] : [part.lengthM, part.widthM];
          const own = sizeWords(sides, system);
          const written = partLabel(mark, name, own, at.width, at.height, type);
          return (
            <g key={`${part.xM} ${part.yM}`}>
              <rect className="sheet-part" {...at} />
              <Text lines={written.lines} upright={written.upright} type={type} {...middle(at)} />
            </g>
          );
        })}
        {plan.offCuts.map((offCut) => {
          const at = rectangle(offCut);
          const text = sizeWords([offCut.lengthM, offCut.widthM], system);
          const written = partLabel('', 'off-cut', text, at.width, at.height, type);
          if (written.lines.join('').trim() === '') return null;
          return (
            <g key={`${offCut.xM} ${offCut.yM}`} className="sheet-off-cut-text">
              <Text
                lines={written.lines.map((line) => line.trim()).filter((line) => line !== '')}
                upright={written.upright}
                type={type}
                {...middle(at)}
              />
            </g>
          );
        })}
        <g className="sheet-size">
          <path
            d={`M0,${-0.4 * type}h${length}M0,${-0.8 * type}v${0.8 * type}M${length},${-0.8 * type}v${0.8 * type}`}
          />
          <path d={`M${-0.4 * type},0v${width}M${-0.8 * type},0h${0.8 * type}M${-0.8 * type},${width}h${0.8 * type}`} />
          <Text lines={[sizeText([plan.lengthM], system)]} upright={false} type={type} x={length / 2} y={-type} />
          <Text lines={[sizeText([plan.widthM], system)]} upright={true} type={type} x={-type} y={width / 2} />
        </g>
        <g className="sheet-grain">
          {grained ? (
            <path
              d={`M0,${width + 0.9 * type}h${5 * type}m${-0.7 * type},${-0.4 * type}l${0.7 * type},${0.4 * type}l${-0.7 * type},${0.4 * type}`}
            />
          ) : null}
          <text x={grained ? 5.6 * type : 0} y={width + 1.25 * type}>
            {grained ? 'grain' : 'no grain: parts may be turned'}
          </text>
        </g>
      </svg>
    </div>
  );
}

const middle = ({ x, y, width, height }: { x: number; y: number; width: number; height: number }) => ({
  x: x + width / 2,
  y: y + height / 2,
});

function Text({
  lines,
  upright,
  type,
  x,
  y,
}: {
  readonly lines: readonly string[];
  readonly upright: boolean;
  readonly type: number;
  readonly x: number;
  readonly y: number;
}) {
  return (
    <text textAnchor="middle" transform={`translate(${x} ${y})${upright ? ' rotate(-90)' : ''}`}>
      {lines.map((line, i) => (
        <tspan key={line} x="0" y={(i - (lines.length - 1) / 2) * 1.25 * type + 0.35 * type}>
          {line}
        </tspan>
      ))}
    </text>
  );
}
