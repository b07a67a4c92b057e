// Unchecked kernels: each treats `count` neighbouring frequencies of one matrix entry or row at a time. Entries and rows
// are stretches of `count` numbers in split arrays; arguments are where the stretches begin. Operations that follow one
// another on the same entries are one loop, since loads and stores are what takes the time.

/** An entry's update is watched: beyond this ratio to the entry before it, four digits are gone. */
const GREATEST_GROWTH = 1e4;

/**
 * out = constant + sign × (sum of the terms). Four frequencies a round: an array's length and address are looked up
 * once a round, which is half of the work of so short a loop.
 */
export function sumInto(
  out: Float64Array,
  at: number,
  constant: number,
  sign: number,
  terms: readonly Float64Array[],
  from: number,
  count: number,
): void {
  const whole = count & ~3;
  const [a, b] = terms;
  if (a === undefined) {
    out.fill(constant, at, at + count);
    return;
  }
  if (b === undefined) {
    for (let f = 0; f < whole; f += 4) {
      const o = at + f;
      const i = from + f;
      out[o] = constant + sign * a[i]!;
      out[o + 1] = constant + sign * a[i + 1]!;
      out[o + 2] = constant + sign * a[i + 2]!;
      out[o + 3] = constant + sign * a[i + 3]!;
    }
    for (let f = whole; f < count; f++) out[at + f] = constant + sign * a[from + f]!;
    return;
  }
  for (let f = 0; f < whole; f += 4) {
    const o = at + f;
    const i = from + f;
    out[o] = constant + sign * (a[i]! + b[i]!);
    out[o + 1] = constant + sign * (a[i + 1]! + b[i + 1]!);
    out[o + 2] = constant + sign * (a[i + 2]! + b[i + 2]!);
    out[o + 3] = constant + sign * (a[i + 3]! + b[i + 3]!);
  }
  for (let f = whole; f < count; f++) out[at + f] = constant + sign * (a[from + f]! + b[from + f]!);
  for (let t = 2; t < terms.length; t++) addScaled(out, at, terms[t]!, from, sign, count);
}

/** out += factor × term */
export function addScaled(
  out: Float64Array,
  at: number,
  term: Float64Array,
  from: number,
  factor: number,
  count: number,
): void {
  for (let f = 0; f < count; f++) out[at + f]! += factor * term[from + f]!;
}

/** out += constant */
export function addConstant(out: Float64Array, at: number, constant: number, count: number): void {
  for (let f = at; f < at + count; f++) out[f]! += constant;
}

/** entry = 1 / entry; returns the greatest squared magnitude of what it becomes. */
export function invert(re: Float64Array, im: Float64Array, at: number, count: number): number {
  let greatest = 0;
  for (let f = at; f < at + count; f++) {
    const a = re[f]!;
    const b = im[f]!;
    const scale = 1 / (a * a + b * b);
    if (!(scale <= greatest)) greatest = scale;
    re[f] = a * scale;
    im[f] = -b * scale;
  }
  return greatest;
}

/** target = source × inverse pivot */
export function multiply(
  re: Float64Array,
  im: Float64Array,
  target: number,
  source: number,
  inverse: number,
  count: number,
): void {
  for (let f = 0; f < count; f++) {
    const a = re[source + f]!;
    const b = im[source + f]!;
    const c = re[inverse + f]!;
    const d = im[inverse + f]!;
    re[target + f] = a * c - b * d;
    im[target + f] = a * d + b * c;
  }
}

/** target -= left × right */
export function update(
  re: Float64Array,
  im: Float64Array,
  target: number,
  left: number,
  right: number,
  count: number,
): void {
  for (let f = 0; f < count; f++) {
    const a = re[left + f]!;
    const b = im[left + f]!;
    const c = re[right + f]!;
    const d = im[right + f]!;
    re[target + f]! -= a * c - b * d;
    im[target + f]! -= a * d + b * c;
  }
}

/** The same for a diagonal entry; a frequency whose update outgrows the entry is marked in `suspect`. */
export function watchedUpdate(
  re: Float64Array,
  im: Float64Array,
  target: number,
  left: number,
  right: number,
  count: number,
  suspect: Uint8Array,
  first: number,
): void {
  for (let f = 0; f < count; f++) {
    const a = re[left + f]!;
    const b = im[left + f]!;
    const c = re[right + f]!;
    const d = im[right + f]!;
    const updateRe = a * c - b * d;
    const updateIm = a * d + b * c;
    const beforeRe = re[target + f]!;
    const beforeIm = im[target + f]!;
    const growth = Math.abs(updateRe) + Math.abs(updateIm);
    // Written so that NaN, from a pivot of exactly 0, is suspect too.
    if (!(growth <= GREATEST_GROWTH * (Math.abs(beforeRe) + Math.abs(beforeIm)))) suspect[first + f] = 1;
    re[target + f] = beforeRe - updateRe;
    im[target + f] = beforeIm - updateIm;
  }
}

/** A pivot that couples to one later row: inverse, multiplier and the watched update of the later row's diagonal. Returns as `invert`. */
export function pivotOne(
  re: Float64Array,
  im: Float64Array,
  pivot: number,
  entry: number,
  target: number,
  diagonal: number,
  count: number,
  suspect: Uint8Array,
  first: number,
): number {
  let greatest = 0;
  for (let f = 0; f < count; f++) {
    const a = re[pivot + f]!;
    const b = im[pivot + f]!;
    const scale = 1 / (a * a + b * b);
    if (!(scale <= greatest)) greatest = scale;
    const p = a * scale;
    const q = -b * scale;
    const u = re[entry + f]!;
    const v = im[entry + f]!;
    const mRe = u * p - v * q;
    const mIm = u * q + v * p;
    const updateRe = mRe * u - mIm * v;
    const updateIm = mRe * v + mIm * u;
    const beforeRe = re[diagonal + f]!;
    const beforeIm = im[diagonal + f]!;
    const growth = Math.abs(updateRe) + Math.abs(updateIm);
    // Written so that NaN, from a pivot of exactly 0, is suspect too.
    if (!(growth <= GREATEST_GROWTH * (Math.abs(beforeRe) + Math.abs(beforeIm)))) suspect[first + f] = 1;
    re[pivot + f] = p;
    im[pivot + f] = q;
    re[target + f] = mRe;
    im[target + f] = mIm;
    re[diagonal + f] = beforeRe - updateRe;
    im[diagonal + f] = beforeIm - updateIm;
  }
  return greatest;
}

/** The same where the entry is sign × a tabulated admittance, read from the row `yRe`, `yIm` at `first`. */
export function pivotBranch(
  re: Float64Array,
  im: Float64Array,
  pivot: number,
  yRe: Float64Array,
  yIm: Float64Array,
  sign: number,
  target: number,
  diagonal: number,
  count: number,
  suspect: Uint8Array,
  first: number,
): number {
  let greatest = 0;
  for (let f = 0; f < count; f++) {
    const a = re[pivot + f]!;
    const b = im[pivot + f]!;
    const scale = 1 / (a * a + b * b);
    if (!(scale <= greatest)) greatest = scale;
    const p = a * scale;
    const q = -b * scale;
    const u = sign * yRe[first + f]!;
    const v = sign * yIm[first + f]!;
    const mRe = u * p - v * q;
    const mIm = u * q + v * p;
    const updateRe = mRe * u - mIm * v;
    const updateIm = mRe * v + mIm * u;
    const beforeRe = re[diagonal + f]!;
    const beforeIm = im[diagonal + f]!;
    const growth = Math.abs(updateRe) + Math.abs(updateIm);
    // Written so that NaN, from a pivot of exactly 0, is suspect too.
    if (!(growth <= GREATEST_GROWTH * (Math.abs(beforeRe) + Math.abs(beforeIm)))) suspect[first + f] = 1;
    re[pivot + f] = p;
    im[pivot + f] = q;
    re[target + f] = mRe;
    im[target + f] = mIm;
    re[diagonal + f] = beforeRe - updateRe;
    im[diagonal + f] = beforeIm - updateIm;
  }
  return greatest;
}

/** x[row] -= entry × x[other] */
export function subtractProduct(
  xRe: Float64Array,
  xIm: Float64Array,
  row: number,
  other: number,
  re: Float64Array,
  im: Float64Array,
  entry: number,
  count: number,
): void {
  for (let f = 0; f < count; f++) {
    const a = re[entry + f]!;
    const b = im[entry + f]!;
    const c = xRe[other + f]!;
    const d = xIm[other + f]!;
    xRe[row + f]! -= a * c - b * d;
    xIm[row + f]! -= a * d + b * c;
  }
}

/** x[row] = -entry × x[other] */
export function setProduct(
  xRe: Float64Array,
  xIm: Float64Array,
  row: number,
  other: number,
  re: Float64Array,
  im: Float64Array,
  entry: number,
  count: number,
): void {
  for (let f = 0; f < count; f++) {
    const a = re[entry + f]!;
    const b = im[entry + f]!;
    const c = xRe[other + f]!;
    const d = xIm[other + f]!;
    xRe[row + f] = b * d - a * c;
    xIm[row + f] = -a * d - b * c;
  }
}

/** x[row] *= entry */
export function scale(
  xRe: Float64Array,
  xIm: Float64Array,
  row: number,
  re: Float64Array,
  im: Float64Array,
  entry: number,
  count: number,
): void {
  for (let f = 0; f < count; f++) {
    const a = re[entry + f]!;
    const b = im[entry + f]!;
    const c = xRe[row + f]!;
    const d = xIm[row + f]!;
    xRe[row + f] = a * c - b * d;
    xIm[row + f] = a * d + b * c;
  }
}
