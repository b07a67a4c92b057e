import type { Drawer } from './Lanes.tsx';
import type { LaneLayout } from './laneLayout.ts';

/** The columns' names with what can be opened from each. */
export function LaneHeads({
  layout,
  drawer,
  setDrawer,
  nodesNamed,
  setNodesNamed,
}: {
  readonly layout: LaneLayout;
  readonly drawer: Drawer | null;
  readonly setDrawer: (drawer: Drawer | null) => void;
  readonly nodesNamed: boolean;
  readonly setNodesNamed: (named: boolean) => void;
}) {
  const opener = (kind: Drawer['kind'], words: string) => (
    <button
      type="button"
      className="lane-button"
      aria-expanded={drawer?.kind === kind}
      onClick={() =>
        setDrawer(drawer?.kind === kind ? null : kind === 'sections' ? { kind, speakerId: null } : { kind })
      }
    >
      {words}
    </button>
  );
  return (
    <div className="lanes-heads" data-layout={layout}>
      <div className="lanes-head">
        <h2>crossover</h2>
        {opener('sections', 'textbook sections')}
        {opener('text', 'circuit as text')}
        <button
          type="button"
          className="lane-button"
          aria-pressed={nodesNamed}
          onClick={() => setNodesNamed(!nodesNamed)}
        >
          node names
        </button>
      </div>
      <div className="lanes-head">
        <h2>drivers</h2>
        {opener('way', 'add a way')}
      </div>
      {layout === 'three-columns' ? (
        <div className="lanes-head">
          <h2>enclosure</h2>
        </div>
      ) : null}
    </div>
  );
}
