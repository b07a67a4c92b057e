// Unchecked kernels: each treats `count` neighbouring frequencies of one matrix entry or row at a time. Entries and rows
// are stretches of `count` numbers in split arrays; arguments are where the stretches begin.

/** An entry's update is watched: beyond this ratio to the entry before it, four digits are gone. */
const GREATEST_GROWTH = 1e4;

export function addScaled(
  outRe: Float64Array,
  outIm: Float64Array,
  at: number,
  re: Float64Array,
  im: Float64Array,
  from: number,
  factor: number,
  count: number,
): void {
  for (let f = 0; f < count; f++) {
    outRe[at + f]! += factor * re[from + f]!;
    outIm[at + f]! += factor * im[from + f]!;
  }
}

/** out[f] += |re| + |im| */
export function addMagnitudes(
  out: Float64Array,
  re: Float64Array,
  im: Float64Array,
  from: number,
  count: number,
): void {
  for (let f = 0; f < count; f++) out[f]! += Math.abs(re[from + f]!) + Math.abs(im[from + f]!);
}

export function addConstant(out: Float64Array, at: number, value: number, count: number): void {
  for (let f = at; f < at + count; f++) out[f]! += value;
}

/** entry = 1 / entry */
export function invert(re: Float64Array, im: Float64Array, at: number, count: number): void {
  for (let f = at; f < at + count; f++) {
    const a = re[f]!;
    const b = im[f]!;
    const scale = 1 / (a * a + b * b);
    re[f] = a * scale;
    im[f] = -b * scale;
  }
}

/** target = source × inverse pivot */
export function multiplier(
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

/** x[row] -= entry × x[other] */
export function substitute(
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
