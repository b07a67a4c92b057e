import { type CircuitView, hasSpeaker } from './circuitView.ts';
import { decompose } from './decompose.ts';
import { addBridge } from './row.ts';
import { splitSystems } from './splitSystems.ts';
import { openEdge, type SpLeaf, type SpTree } from './spTree.ts';
import { type Stage, stagesOf } from './stages.ts';

/** A circuit sorted into what is drawn where; nothing has a place yet. */
export interface Composition {
  /** Edges of the speakers, one lane each, from top to bottom. */
  readonly lanes: readonly number[];
  /** Stages with ways in them. */
  readonly ways: readonly Stage[];
  /** An amplifier's network without a speaker in it. */
  readonly feeds: readonly Stage[];
  /** Pieces that neither an amplifier nor a speaker belongs to. */
  readonly loose: readonly Stage[];
  /** Single parts that hang on nothing, or on one node with both ends. */
  readonly single: readonly SpLeaf[];
  /** Pieces between different rows. */
  readonly links: readonly SpTree[];
  /** Edges of all pieces outside the series-parallel structure, bridges among them. */
  readonly outside: readonly SpTree[];
}

/** Sorts a circuit: `order` lists the speakers' ids from top to bottom, others follow in the order of the parts. */
export function compose(view: CircuitView, order: readonly string[]): Composition {
  const leaf = (edge: number): SpLeaf => {
    const [from, to] = view.edges[edge]!.nodes;
    return { shape: 'leaf', edge: edge < view.parts.length ? edge : openEdge, from, to };
  };
  const partition = splitSystems(view);
  const ways: Stage[] = [];
  const feeds: Stage[] = [];
  const loose: Stage[] = [];
  const single = partition.shorted.map(leaf);
  const outside: SpTree[] = [];
  const addLinks = (links: readonly SpTree[]): void => {
    for (const link of links) {
      if (!hasSpeaker(view, link)) outside.push(link);
      else ways.push(stagesOf(view, link, null, link.from, link.to));
    }
  };
  addLinks(partition.links.map(leaf));

  for (const { hot, ret, amplifier, edges } of partition.systems) {
    const source = amplifier === null ? null : fromNode(leaf(amplifier), hot);
    const [first] = edges;
    const isSpeaker = first !== undefined && view.parts[first]!.kind === 'speaker';
    if (amplifier === null && edges.length === 1 && !isSpeaker) {
      single.push(leaf(first!));
      continue;
    }
    const { tree, links } =
      hot === ret ? { tree: leaf(first!), links: [] } : decompose(view, edges.map(leaf), [hot, ret]);
    const stage = stagesOf(view, tree, source, hot, ret);
    const carriesSpeaker = tree !== null && hasSpeaker(view, tree);
    (carriesSpeaker ? ways : amplifier === null ? loose : feeds).push(stage);
    addLinks(links);
  }
  const rows = [...ways, ...feeds, ...loose].flatMap(withChildren).map((stage) => stage.row);
  const links = outside.filter((piece) => !rows.some((row) => addBridge(row, piece)));
  return { lanes: laneOrder(view, order), ways, feeds, loose, single, links, outside };
}

const fromNode = (leaf: SpLeaf, node: string): SpLeaf =>
  leaf.from === node ? leaf : { ...leaf, from: leaf.to, to: leaf.from };

const withChildren = (stage: Stage): Stage[] => [...stage.children.flatMap(withChildren), stage];

function laneOrder(view: CircuitView, order: readonly string[]): number[] {
  const speakers = view.parts.flatMap((part, index) => (part.kind === 'speaker' ? [index] : []));
  const asked = order.flatMap((id) => speakers.filter((index) => view.parts[index]!.id === id));
  return [...new Set([...asked, ...speakers])];
}
