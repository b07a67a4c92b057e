import type { Part } from '../../../src/core/circuit/part.ts';
import { partsFrom } from './partsFrom.ts';

export interface CircuitFixture {
  readonly title: string;
  readonly parts: readonly Part[];
  /** Speakers from top to bottom. */
  readonly order: readonly string[];
  /** Whether every wire can be laid without crossing another. */
  readonly crossings: number;
}

const fixture = (title: string, order: string, crossings: number, text: string): CircuitFixture => ({
  title,
  order: order.split(' '),
  crossings,
  parts: partsFrom(text),
});

export const sixParts = fixture(
  'sealed two-way of six parts',
  'LS1 LS2',
  0,
  `A1 in 0
  L1 in w
  C1 in t
  L2 t 0
  LS1 t 0
  LS2 w 0`,
);

export const sealedTwoWay = fixture(
  'sealed two-way with L-pad and conjugate network',
  'LS1 LS2',
  0,
  `A1 in 0
  C1 in a
  L1 a 0
  R1 a b
  R3 b 0
  LS1 b 0
  L2 in c
  C2 c 0
  R2 c d
  C3 d 0
  LS2 c 0`,
);

export const biWiredThreeWay = fixture(
  'bi-wired three-way with notch, L-pad and conjugate network',
  'LS1 LS2 LS3',
  1,
  `A1 lf 0
  J1 lf hf
  J2 hfr 0
  C1 hf t1
  L1 t1 hfr
  C2 t1 t2
  R1 t2 t3
  R2 t3 hfr
  LS1 t3 hfr
  C3 hf m1
  L2 m1 hfr
  L3 m1 m2
  C4 m2 hfr
  R3 m2 m3
  R4 m2 n1
  L4 n1 n2
  C5 n2 hfr
  LS2 hfr m3
  L5 lf w1
  C6 w1 0
  R5 w1 w2
  C7 w2 0
  LS3 w1 0`,
);

export const seriesTwoWay = fixture(
  'series crossover two-way',
  'LS1 LS2',
  0,
  `A1 in 0
  L1 in mid
  LS1 in mid
  C1 mid 0
  R1 mid z
  C2 z 0
  LS2 mid 0`,
);

export const fourWay = fixture(
  'four-way',
  'LS1 LS2 LS3 LS4',
  0,
  `A1 in 0
  C1 in t1
  L1 t1 0
  C2 t1 t2
  R1 t2 t3
  R2 t3 0
  LS1 t3 0
  C3 in u1
  L2 u1 0
  C4 u1 u2
  L3 u2 u3
  C5 u3 0
  R3 u3 u4
  R4 u4 0
  L4 u3 n1
  C6 n1 n2
  R5 n2 0
  LS2 0 u4
  C7 in m1
  L5 m1 0
  L6 m1 m2
  C8 m2 0
  L7 m2 m3
  C9 m2 m3
  R6 m2 m3
  R7 m3 q1
  C10 q1 0
  LS3 m3 0
  L8 in w1
  C11 w1 0
  L9 w1 w2
  C12 w2 0
  R8 w2 z1
  C13 z1 0
  R9 w2 y1
  L10 y1 y2
  C14 y2 0
  LS4 w2 0`,
);

export const sixtyParts = fixture(
  'four-way of sixty parts',
  'LS1 LS2 LS3 LS4',
  0,
  `A1 in 0
  R20 in amp
  C1 amp t1
  L1 t1 0
  C2 t1 t2
  R21 t1 t2
  L11 t2 0
  R1 t2 t3
  R2 t3 0
  L12 t3 t4
  C15 t4 t5
  R22 t5 0
  R23 t3 t6
  C16 t6 0
  LS1 t3 0
  C3 amp u1
  L2 u1 0
  C4 u1 u2
  L3 u2 u3
  C5 u3 0
  R3 u3 u4
  R4 u4 0
  L4 u3 n1
  C6 n1 n2
  R5 n2 0
  R24 u4 u5
  C17 u5 0
  LS2 0 u4
  C7 amp m1
  L5 m1 0
  L6 m1 m2
  C8 m2 0
  L7 m2 m3
  C9 m2 m3
  R6 m2 m3
  R7 m3 q1
  C10 q1 0
  R25 m3 m4
  R26 m4 0
  L13 m4 m5
  C18 m5 m6
  R27 m6 0
  LS3 m4 0
  L8 amp w1
  C11 w1 0
  L9 w1 w2
  C12 w2 0
  R8 w2 z1
  C13 z1 0
  R9 w2 y1
  L10 y1 y2
  C14 y2 0
  L14 w2 w3
  C19 w3 0
  R28 w3 x1
  C20 x1 0
  R29 amp v1
  L15 v1 v2
  C21 v2 0
  LS4 w3 0`,
);

export const bridged = fixture(
  'bridged network: part between ways and bridged T',
  'LS1 LS2',
  0,
  `A1 in 0
  C1 in a
  L1 a 0
  R1 a b
  R2 b c
  R3 b 0
  C2 a c
  LS1 c 0
  L2 in d
  C3 d 0
  LS2 d 0
  R4 a d`,
);

export const twoChannels = fixture(
  'two amplifier channels',
  'LS1 LS2 LS3',
  0,
  `A1 hf 0
  A2 lf 0
  C1 hf a
  L1 a 0
  LS1 a 0
  C2 hf b
  L2 b c
  LS2 c 0
  L3 lf d
  C3 d 0
  LS3 d 0`,
);

export const midTweeterMid = fixture(
  'two woofers round a tweeter, shared low-pass and shared series part',
  'LS1 LS2 LS3',
  1,
  `A1 amp 0
  R9 amp in
  R8 in e
  L8 e f
  C8 f 0
  L1 in w
  C1 w 0
  R1 w x
  C2 x 0
  LS1 w 0
  LS3 w 0
  C3 in t
  L2 t 0
  LS2 0 t`,
);

export const seriesWoofers = fixture(
  'two woofers in series, tweeter with trap',
  'LS1 LS2 LS3',
  0,
  `A1 in 0
  C1 in a
  L1 a b
  C2 a b
  R1 a b
  L2 b 0
  LS1 b 0
  L3 in c
  C3 c 0
  LS2 c d
  LS3 d 0`,
);

export const returnParts = fixture(
  'parts in the returns',
  'LS1 LS2',
  0,
  `A1 in gnd
  R9 gnd 0
  C1 in a
  L1 a 0
  R1 a b
  LS1 b r
  L4 r s
  R2 s 0
  C4 s 0
  R3 b r
  L2 in d
  C3 d 0
  LS2 d 0`,
);

export const broken = fixture(
  'floating, shorted and unconnected parts',
  'LS1 LS2 LS3',
  0,
  `A1 in 0
  C1 in a
  L1 a 0
  R1 b c
  LS1 c 0
  L2 in d
  C2 d 0
  R2 d open
  LS2 d 0
  LS3 p q
  R3 x x
  R4 y1 y2
  C4 y2 y3
  L4 z1 z2
  R5 0 0`,
);

export const oneWay = fixture(
  'one full-range driver with trap and shelf',
  'LS1',
  0,
  `A1 in 0
  L1 in a
  R1 in a
  C1 in a
  R2 a b
  C2 a b
  R3 b c
  C3 c 0
  LS1 b 0`,
);

export const jumperedTwoWay = fixture(
  'bi-wired two-way',
  'LS1 LS2',
  1,
  `A1 lf 0
  J1 lf hf
  J2 hfr 0
  C1 hf a
  L1 a hfr
  R1 a b
  R2 b hfr
  LS1 b hfr
  L2 lf c
  C2 c d
  R3 d 0
  LS2 c 0`,
);

export const shelfTwoWay = fixture(
  'two-way with nested legs',
  'LS1 LS2',
  0,
  `A1 in 0
  C1 in a
  L1 a x
  R8 a x
  R1 x 0
  C9 x 0
  L9 x y
  R9 y 0
  R2 a b
  C2 a b
  LS1 b 0
  L2 in d
  C3 d 0
  LS2 d 0`,
);

export const forkedLeg = fixture(
  'leg that begins with two parts side by side',
  'LS1',
  0,
  `A1 in 0
  C1 in a
  L1 a x
  R8 a x
  C9 x 0
  R2 a b
  R3 b 0
  LS1 b 0`,
);

export const circuits: readonly CircuitFixture[] = [
  sixParts,
  sealedTwoWay,
  biWiredThreeWay,
  seriesTwoWay,
  fourWay,
  sixtyParts,
  bridged,
  twoChannels,
  midTweeterMid,
  seriesWoofers,
  returnParts,
  broken,
  oneWay,
  jumperedTwoWay,
  shelfTwoWay,
  forkedLeg,
];
