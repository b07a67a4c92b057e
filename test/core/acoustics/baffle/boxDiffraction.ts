import { gaussLegendre } from '../../../../src/core/math/gaussLegendre.ts';

// Independent computation for the baffle step: edge-source diffraction of a rigid box to high order, one frequency at a time
// (A. Asheim, U. P. Svensson, J. Acoust. Soc. Am. 133, 2013, 3681). It shares nothing with the product but the Gauss rule. Its
// own check is the table of boundary-element levels in the reference cases.

type Point = readonly [number, number, number];
type Face = readonly [axis: number, sign: number];
interface Edge {
  readonly along: number;
  readonly faces: readonly [Face, Face];
  readonly at: readonly [number, number];
  readonly from: number;
  readonly to: number;
}
interface Nodes {
  readonly points: readonly Point[];
  readonly weights: readonly number[];
}
interface Pair {
  readonly from: number;
  readonly to: number;
  readonly face: Face;
}

const NU = 2 / 3;
const FACTOR = NU / (4 * Math.PI);
const FRONT: Face = [2, 1];
const same = (a: Face, b: Face): boolean => a[0] === b[0] && a[1] === b[1];
const far = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
const radius = (e: Edge, p: Point): number => Math.hypot(p[e.faces[0][0]]! - e.at[0], p[e.faces[1][0]]! - e.at[1]);

const angleOf = (e: Edge, face: Face, p: Point): number => {
  const mine = same(e.faces[0], face) ? 0 : 1;
  const [own, other] = [e.faces[mine]!, e.faces[1 - mine]!];
  const out = (p[own[0]]! - e.at[mine]!) * own[1];
  const across = (p[other[0]]! - e.at[1 - mine]!) * other[1];
  const angle = Math.atan2(out, -across);
  return angle < -1e-9 ? angle + 2 * Math.PI : angle;
};
const hidden = (angle: number): boolean => angle > 1.5 * Math.PI + 1e-9;

/** B for a source point on a face of the edge, an edge point and a receiver at a given angle from that face. */
const strength = (e: Edge, source: Point, q: Point, receiver: Point, angle: number): number => {
  const [zq, zs, zr] = [q[e.along]!, source[e.along]!, receiver[e.along]!];
  const radii = Math.max(radius(e, source), 1e-12) * Math.max(radius(e, receiver), 1e-12);
  const eta = Math.acosh(Math.max(1, (far(source, q) * far(q, receiver) + (zq - zs) * (zq - zr)) / radii));
  const beta = (phi: number) => Math.sin(NU * phi) / (Math.cosh(NU * eta) - Math.cos(NU * phi));
  return 2 * (beta(Math.PI + angle) + beta(Math.PI - angle));
};

const edgesOf = (width: number, height: number, depth: number): Edge[] => {
  const ends = [
    [-width / 2, width / 2],
    [0, height],
    [-depth, 0],
  ] as const;
  return [0, 1, 2].flatMap((along) => {
    const [u, v] = [0, 1, 2].filter((axis) => axis !== along) as [number, number];
    return [1, -1].flatMap((su) =>
      [1, -1].map(
        (sv): Edge => ({
          along,
          faces: [
            [u, su],
            [v, sv],
          ],
          at: [ends[u]![su === 1 ? 1 : 0]!, ends[v]![sv === 1 ? 1 : 0]!],
          from: ends[along]![0],
          to: ends[along]![1],
        }),
      ),
    );
  });
};

const nodesOf = (e: Edge, count: number): Nodes => {
  const rule = gaussLegendre(count);
  const half = (e.to - e.from) / 2;
  const points = Array.from(rule.nodes, (node): Point => {
    const p: [number, number, number] = [0, 0, 0];
    p[e.along] = e.from + half * (1 + node);
    p[e.faces[0][0]] = e.at[0];
    p[e.faces[1][0]] = e.at[1];
    return p;
  });
  return { points, weights: Array.from(rule.weights, (w) => w * half) };
};

/**
 * Pressure relative to the free field of the same source at the sources' mean place, for each receiver, as a magnitude in dB.
 * Sources lie on the front (z = 0) and count alike; `perEdge` Gauss points on each edge for the second and higher orders.
 */
export const boxDiffractionDb = (
  box: { readonly widthM: number; readonly heightM: number; readonly depthM: number },
  perEdge: number,
  orders: number,
) => {
  const edges = edgesOf(box.widthM, box.heightM, box.depthM);
  const nodes = edges.map((e) => nodesOf(e, perEdge));
  const dense = edges.map((e) => nodesOf(e, 80));
  const pairs: Pair[] = edges.flatMap((a, from) =>
    edges.flatMap((b, to) => {
      const face = from === to ? undefined : a.faces.find((f) => b.faces.some((g) => same(f, g)));
      return face === undefined ? [] : [{ from, to, face }];
    }),
  );
  const N = perEdge;
  // couplings[i]: from pair i = (a → b) to pair k = (b → c): B over points p of a, q of b, r of c.
  const couplings = pairs.flatMap((first, i) =>
    pairs.flatMap((second, k) => {
      if (second.from !== first.to) return [];
      const angle = same(first.face, second.face) ? 0 : 1.5 * Math.PI;
      const b = new Float64Array(N ** 3);
      for (let p = 0; p < N; p++)
        for (let q = 0; q < N; q++)
          for (let r = 0; r < N; r++)
            b[(p * N + q) * N + r] = strength(
              edges[first.to]!,
              nodes[first.from]!.points[p]!,
              nodes[first.to]!.points[q]!,
              nodes[second.to]!.points[r]!,
              angle,
            );
      return [{ i, k, b }];
    }),
  );

  return (sources: readonly Point[], receivers: readonly Point[], wavenumber: number): number[] => {
    const k = wavenumber;
    const middle = [0, 1, 2].map(
      (axis) => sources.reduce((sum, s) => sum + s[axis]!, 0) / sources.length,
    ) as unknown as Point;
    const total = receivers.map(() => [0, 0]);
    const add = (receiver: number, size: number, length: number) => {
      total[receiver]![0]! += size * Math.cos(k * length);
      total[receiver]![1]! -= size * Math.sin(k * length);
    };
    const share = 1 / sources.length;
    for (const s of sources)
      receivers.forEach((receiver, n) => {
        if (receiver[2] > 0) add(n, (2 * share) / far(s, receiver), far(s, receiver));
        edges.forEach((e, i) => {
          if (!e.faces.some((f) => same(f, FRONT))) return;
          const angle = angleOf(e, FRONT, receiver);
          if (hidden(angle)) return;
          dense[i]!.points.forEach((q, j) => {
            const [m, l] = [far(s, q), far(q, receiver)];
            add(n, (-FACTOR * share * strength(e, s, q, receiver, angle) * dense[i]!.weights[j]!) / (m * l), m + l);
          });
        });
      });
    // Amplitudes of the waves from p on one edge to q on another, at p.
    let waves = pairs.map(({ from, to, face }) => {
      const re = new Float64Array(N * N);
      const im = new Float64Array(N * N);
      const e = edges[from]!;
      if (!e.faces.some((f) => same(f, FRONT))) return { re, im };
      const angle = same(face, FRONT) ? 0 : 1.5 * Math.PI;
      for (const s of sources)
        for (let p = 0; p < N; p++)
          for (let q = 0; q < N; q++) {
            const m = far(s, nodes[from]!.points[p]!);
            const size =
              (-FACTOR *
                share *
                nodes[from]!.weights[p]! *
                strength(e, s, nodes[from]!.points[p]!, nodes[to]!.points[q]!, angle)) /
              m;
            re[p * N + q]! += size * Math.cos(k * m);
            im[p * N + q]! -= size * Math.sin(k * m);
          }
      return { re, im };
    });
    for (let order = 2; order <= orders; order++) {
      // Half, since a wave along a face counts with its image; carried from p to q.
      const carried = waves.map(({ re, im }, i) => {
        const { from, to } = pairs[i]!;
        const out = { re: new Float64Array(N * N), im: new Float64Array(N * N) };
        for (let p = 0; p < N; p++)
          for (let q = 0; q < N; q++) {
            const d = far(nodes[from]!.points[p]!, nodes[to]!.points[q]!);
            const [c, s] = [Math.cos(k * d) / (2 * d), -Math.sin(k * d) / (2 * d)];
            out.re[p * N + q] = re[p * N + q]! * c - im[p * N + q]! * s;
            out.im[p * N + q] = re[p * N + q]! * s + im[p * N + q]! * c;
          }
        return out;
      });
      carried.forEach(({ re, im }, i) => {
        const { from, to, face } = pairs[i]!;
        receivers.forEach((receiver, n) => {
          const angle = angleOf(edges[to]!, face, receiver);
          if (hidden(angle)) return;
          for (let p = 0; p < N; p++)
            for (let q = 0; q < N; q++) {
              const point = nodes[to]!.points[q]!;
              const l = far(point, receiver);
              const size =
                (-FACTOR *
                  nodes[to]!.weights[q]! *
                  strength(edges[to]!, nodes[from]!.points[p]!, point, receiver, angle)) /
                l;
              const [c, s] = [size * Math.cos(k * l), -size * Math.sin(k * l)];
              total[n]![0]! += re[p * N + q]! * c - im[p * N + q]! * s;
              total[n]![1]! += re[p * N + q]! * s + im[p * N + q]! * c;
            }
        });
      });
      const next = pairs.map(() => ({ re: new Float64Array(N * N), im: new Float64Array(N * N) }));
      for (const { i, k: onward, b } of couplings) {
        const weights = nodes[pairs[i]!.to]!.weights;
        for (let p = 0; p < N; p++)
          for (let q = 0; q < N; q++) {
            const re = -FACTOR * weights[q]! * carried[i]!.re[p * N + q]!;
            const im = -FACTOR * weights[q]! * carried[i]!.im[p * N + q]!;
            for (let r = 0; r < N; r++) {
              next[onward]!.re[q * N + r]! += re * b[(p * N + q) * N + r]!;
              next[onward]!.im[q * N + r]! += im * b[(p * N + q) * N + r]!;
            }
          }
      }
      waves = next;
    }
    return receivers.map(
      (receiver, n) => 20 * Math.log10(Math.hypot(total[n]![0]!, total[n]![1]!) * far(middle, receiver)),
    );
  };
};
