import { arrangeAcross } from './arrangeAcross.ts';
import { arrangeDown } from './arrangeDown.ts';
import type { CircuitView } from './circuitView.ts';
import { partsIn } from './circuitView.ts';
import type { Composition } from './compose.ts';
import type { Draft, Pen } from './draft.ts';
import { drawBuses } from './drawBuses.ts';
import { addTo, type Buses, drawFrames } from './drawFrames.ts';
import { framesOf, isWay, withDescendants } from './frame.ts';
import { partAcross, terminalValueWidth } from './metrics.ts';
import { channelHeight, drawLinks, slotLinks } from './placeLinks.ts';
import type { SchematicLane, SchematicPlan } from './plan.ts';
import { shelve } from './shelve.ts';

/** A drawing whose symbols stand and whose wires are wishes. */
export interface Layout extends Pick<SchematicPlan, 'trunkWidth' | 'speakerX' | 'lanes' | 'links' | 'openings'> {
  readonly draft: Draft;
}

/** Sets every part of a composition down, with `room` units of free space more than needed between lanes and columns. */
export function layOut(view: CircuitView, composition: Composition, room: number): Layout {
  const { lanes: edges } = composition;
  const draft: Draft = { parts: [], edges: [], strokes: [] };
  const roots = composition.ways.map((stage) => framesOf(view, stage, (edge) => edges.indexOf(edge), room));
  const frames = roots.flatMap(withDescendants);
  const { trunkWidth, speakerX } = arrangeAcross(frames, room);
  const farX = speakerX + partAcross / 2 + 1 + terminalValueWidth;

  const slots = slotLinks(frames, composition.links, edges.length, { left: trunkWidth, right: farX });
  const above = edges.map((_, lane) => channelHeight(slots, lane) + room);
  const bands = arrangeDown(frames, edges.length, above);
  const waysBottom = bands.at(-1)?.bottom ?? 0;
  const linksBottom = waysBottom + channelHeight(slots, edges.length) + room;

  const shared = edges.length;
  const buses: Buses = new Map();
  const penIn = (lane: number): Pen => ({ view, draft, lane });
  for (const root of roots) {
    addTo(buses, drawFrames((frame) => penIn(isWay(frame) ? frame.lanes[0]! : shared), root, buses).taps);
  }
  drawLinks(penIn(shared), slots, (channel) => bands[channel]?.ceiling ?? linksBottom);
  const width = Math.max(farX, 40);
  const feedsBottom = shelve(penIn(shared), composition.feeds, [], buses, { top: linksBottom, width, room });
  const isShared = draft.parts.some((part) => part.lane === shared);
  const loosePen = penIn(isShared ? shared + 1 : shared);
  const drawn = draft.parts.length;
  const bottom = shelve(loosePen, composition.loose, composition.single, buses, { top: feedsBottom, width, room });
  drawBuses(
    draft,
    buses,
    speakerX,
    farX,
    bands.flatMap(({ hotY, returnY }) => [hotY, returnY]),
  );

  const lanes: SchematicLane[] = bands.map(({ top, bottom: end }, lane) => ({
    kind: 'way',
    partId: view.parts[edges[lane]!]!.id,
    top,
    bottom: end,
  }));
  if (isShared) lanes.push({ kind: 'shared', partId: null, top: 0, bottom: feedsBottom });
  if (draft.parts.length > drawn) lanes.push({ kind: 'loose', partId: null, top: feedsBottom, bottom });
  const links = composition.outside.flatMap((tree) => partsIn(view, tree).map((part) => part.id));
  const openings = view.edges.slice(view.parts.length).map(({ nodes }) => nodes);
  return { draft, trunkWidth, speakerX, lanes, links, openings };
}
