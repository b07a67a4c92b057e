import * as z from 'zod/mini';

// Compiled validators would need `eval`, which the page's content policy forbids.
z.config({ jitless: true });

/** Far beyond any loudspeaker in SI units, and small enough that products of a few such values stay finite. */
export const MOST = 1e9;
export const finite = z.number().check(z.minimum(-MOST), z.maximum(MOST));
export const positive = z.number().check(z.positive(), z.maximum(MOST));
export const nonNegative = z.number().check(z.nonnegative(), z.maximum(MOST));
/** How many of each a document holds. */
export const most = {
  parts: 200,
  drivers: 24,
  chambers: 12,
  ports: 12,
  mounts: 12,
  passiveRadiators: 8,
  lines: 6,
  braces: 24,
  amplifiers: 6,
  curves: 40,
  snapshots: 2,
} as const;

export const id = z.string().check(z.minLength(1), z.maxLength(60));
export const nodeName = z.string().check(z.regex(/^[A-Za-z0-9_.+-]{1,32}$/));
export const nodes = z.readonly(z.tuple([nodeName, nodeName]));
export const lossQ = z.strictObject({ q: positive, atHz: positive });
