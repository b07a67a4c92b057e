/** A point in the cabinet's frame: origin at the bottom centre of the front face, x right, y up, z towards the listener. */
export interface Position {
  readonly xM: number;
  readonly yM: number;
  readonly zM: number;
}

/** Outer size of a cabinet that stands behind the plane z = 0. */
export interface CabinetBox {
  readonly widthM: number;
  readonly heightM: number;
  readonly depthM: number;
}

type Axis = 0 | 1 | 2;
export type Triple = readonly [number, number, number];

/** One of the six faces by the axis of its outward normal (0 x, 1 y, 2 z) and the normal's sign. */
export interface Face {
  readonly axis: Axis;
  readonly sign: 1 | -1;
}

export const FRONT: Face = { axis: 2, sign: 1 };

/** A straight 90-degree edge along one axis, between two faces; `at` is where it lies along their two normals. */
export interface BoxEdge {
  readonly along: Axis;
  readonly from: number;
  readonly to: number;
  readonly faces: readonly [Face, Face];
  readonly at: readonly [number, number];
}

const AXES: readonly Axis[] = [0, 1, 2];
const SIGNS = [1, -1] as const;
const isFace = (a: Face, b: Face): boolean => a.axis === b.axis && a.sign === b.sign;

interface EdgeShape {
  readonly along: Axis;
  readonly faces: readonly [Face, Face];
}

const EDGE_SHAPES: readonly EdgeShape[] = AXES.flatMap((along) => {
  const [first, second] = AXES.filter((axis) => axis !== along) as [Axis, Axis];
  return SIGNS.flatMap((s) =>
    SIGNS.map(
      (u): EdgeShape => ({
        along,
        faces: [
          { axis: first, sign: s },
          { axis: second, sign: u },
        ],
      }),
    ),
  );
});

/** The twelve edges of a box. */
export const boxEdges = (box: CabinetBox): BoxEdge[] => {
  const least = [-box.widthM / 2, 0, -box.depthM] as const;
  const most = [box.widthM / 2, box.heightM, 0] as const;
  const place = (face: Face): number => (face.sign === 1 ? most : least)[face.axis];
  return EDGE_SHAPES.map(({ along, faces }) => ({
    along,
    faces,
    from: least[along],
    to: most[along],
    at: [place(faces[0]), place(faces[1])] as const,
  }));
};

/** Does the edge bound this face? */
export const bounds = (edge: BoxEdge, face: Face): boolean =>
  isFace(edge.faces[0], face) || isFace(edge.faces[1], face);

export const pointOnEdge = (edge: BoxEdge, z: number): Triple => {
  const p: [number, number, number] = [0, 0, 0];
  p[edge.along] = z;
  p[edge.faces[0].axis] = edge.at[0];
  p[edge.faces[1].axis] = edge.at[1];
  return p;
};

/** Plain square root: it is several times faster than Math.hypot, and no length here comes near overflow. */
export const distanceBetween = (a: Triple, b: Triple): number => {
  const [x, y, z] = [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
  return Math.sqrt(x * x + y * y + z * z);
};

/** Distance of a point from the edge's line. */
export const distanceFromEdge = (edge: BoxEdge, p: Triple): number => {
  const u = p[edge.faces[0].axis] - edge.at[0];
  const v = p[edge.faces[1].axis] - edge.at[1];
  return Math.sqrt(u * u + v * v);
};

/** Angle of a point through the air from one face of the edge: 0 on it, 3π/2 on the other face, above that hidden by the box. */
export const angleFromFace = (edge: BoxEdge, face: Face, p: Triple): number => {
  const mine = isFace(edge.faces[0], face) ? 0 : 1;
  const other = mine === 0 ? 1 : 0;
  const out = (p[edge.faces[mine].axis] - edge.at[mine]) * edge.faces[mine].sign;
  const across = (p[edge.faces[other].axis] - edge.at[other]) * edge.faces[other].sign;
  const angle = Math.atan2(out, -across);
  return angle < -1e-9 ? angle + 2 * Math.PI : angle;
};

const LAST_SEEN_ANGLE = 1.5 * Math.PI + 1e-9;
export const isHidden = (angle: number): boolean => angle > LAST_SEEN_ANGLE;
