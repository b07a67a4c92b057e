import * as z from 'zod/mini';
import { finite, id, most, nonNegative, positive } from './basics.ts';

/** A board inside a chamber that stiffens it: level, upright across (parallel to the front) or lengthwise (parallel to the sides). */
export const braceSchema = z.strictObject({
  id,
  chamberId: id,
  lies: z.enum(['level', 'across', 'lengthwise']),
  /** Of its middle: height above the outer bottom, depth behind the front plane, or to the right of the middle. */
  atM: finite,
  thicknessM: positive,
  /** What its openings take of its area. */
  openShare: z.number().check(z.minimum(0), z.maximum(0.95)),
});

/** The cabinet as wood; sizes of the enclosure are outer ones. */
export const woodSchema = z.strictObject({
  /** Thickness of single panels where it differs; null: as all others. */
  frontM: z.nullable(positive),
  backM: z.nullable(positive),
  leftM: z.nullable(positive),
  rightM: z.nullable(positive),
  topM: z.nullable(positive),
  bottomM: z.nullable(positive),
  /** How the four panels round the front meet, and which of them run through where they butt. */
  joint: z.enum(['butt', 'mitre', 'rebate']),
  through: z.enum(['sides', 'top-and-bottom']),
  /** How deep a rebate is cut. */
  rebateM: nonNegative,
  /** How far the front leans back from upright, degrees. */
  frontLeanDeg: z.number().check(z.minimum(0), z.maximum(30)),
  /** Outer width at the back of a cabinet that narrows; null: as the front. */
  backWidthM: z.nullable(positive),
  braces: z.array(braceSchema).check(z.maxLength(most.braces)),
  /** Crossover board with its parts, as the box that it takes up. */
  board: z.nullable(z.strictObject({ chamberId: id, widthM: positive, heightM: positive, depthM: positive })),
  /** The boards that are bought. */
  stock: z.strictObject({
    lengthM: positive,
    widthM: positive,
    kerfM: nonNegative,
    /** Taken off each edge before anything else. */
    trimM: nonNegative,
    /** Whether a grain runs along the length, so that panels may not be turned. */
    grained: z.boolean(),
  }),
});

export type Brace = z.infer<typeof braceSchema>;
export type Wood = z.infer<typeof woodSchema>;
