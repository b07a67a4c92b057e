import { memo } from 'react';
import type { SchematicPlan } from '../../../core/schematic/plan.ts';
import type { LitPlaces } from './litPlaces.ts';
import { nodeLabel } from './nodeLabel.ts';
import { nodeWords } from './partNames.ts';
import { type SchematicView, xPx, yPx } from './schematicView.ts';

/** Wires and joins of the drawing, and the nodes' names when asked for. Drawn again only when the plan or its place changes. */
export const SchematicWires = memo(function SchematicWires({
  plan,
  view,
  lit,
  named,
}: {
  readonly plan: SchematicPlan;
  readonly view: SchematicView;
  readonly lit: LitPlaces;
  readonly named: boolean;
}) {
  return (
    <g>
      {plan.wires.map((wire) => {
        const points = wire.points.map((point) => `${xPx(view, point.x).toFixed(1)},${yPx(view, point.y).toFixed(1)}`);
        return (
          <path
            key={`${wire.node} ${points.join(' ')}`}
            className="schematic-wire"
            data-lit={lit.nodes.get(wire.node)}
            d={`M${points.join('L')}`}
          />
        );
      })}
      {plan.dots.map((dot) => (
        <circle
          key={`${dot.node} ${dot.x} ${dot.y}`}
          className="schematic-dot"
          data-lit={lit.nodes.get(dot.node)}
          cx={xPx(view, dot.x)}
          cy={yPx(view, dot.y)}
          r={2.6}
        />
      ))}
      {[...new Set(plan.wires.map((wire) => wire.node))].map((node) => {
        const label = named || lit.nodes.has(node) ? nodeLabel(plan, node) : null;
        return label ? (
          <text
            key={`name ${node}`}
            className="schematic-node"
            data-lit={lit.nodes.get(node)}
            textAnchor={label.align}
            x={xPx(view, label.x)}
            y={yPx(view, label.y)}
          >
            {nodeWords(node)}
          </text>
        ) : null;
      })}
    </g>
  );
});
