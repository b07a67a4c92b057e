import { reduceSeriesParallel } from '../../../src/core/schematic/index.ts';
import type { Adapter, Inputs, Json } from '../adapter.ts';

const nodeName = (node: Json): string => String(node);
const pairs = (edges: Json | undefined): [string, string][] => {
  if (!Array.isArray(edges)) throw new TypeError(`expected a list of edges, got ${JSON.stringify(edges)}`);
  return (edges as readonly (readonly [Json, Json])[]).map(([from, to]) => [nodeName(from), nodeName(to)]);
};

/** Networks as lists of node pairs under the keys edges_NAME; counts come back under the same NAME. */
export const adapter: Adapter = {
  family: 'drawing',
  requires: ['source', 'sink'],
  allows: ['edges_ladder5', 'edges_wheatstone', 'edges_two_way'],
  run(inputs: Inputs): Json {
    const terminals = [nodeName(inputs.source!), nodeName(inputs.sink!)] as const;
    return Object.fromEntries(
      Object.keys(inputs)
        .filter((key) => key.startsWith('edges_'))
        .flatMap((key) => {
          const name = key.slice('edges_'.length);
          const reduced = reduceSeriesParallel(pairs(inputs[key]), terminals);
          return [
            [`edges_left_${name}`, reduced.edges.length],
            [`series_steps_${name}`, reduced.seriesSteps],
            [`parallel_steps_${name}`, reduced.parallelSteps],
          ];
        }),
    );
  },
};
