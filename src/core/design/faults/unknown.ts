/** What a fit may move: the logarithm of a value over its nominal one. */
export type Unknown = (
  | { readonly kind: 'part'; readonly partId: string; readonly name: PartValue }
  | { readonly kind: 'driver'; readonly partId: string; readonly name: DriverValue }
  /** Factor on the admittance of one branch of the air. */
  | { readonly kind: 'air'; readonly branchId: string }
  | { readonly kind: 'leak'; readonly chamberId: string }
  | { readonly kind: 'cable' }
) & {
  /** Spread of the logarithm before anything is measured; its mean is 0. */
  readonly sdLog: number;
};

export type PartValue = 'ohm' | 'farad' | 'henry' | 'dcrOhm';
export type DriverValue = 'resistance' | 'inductance' | 'compliance' | 'loss' | 'motor';

/** A name for each unknown that no other has. */
export function unknownKey(unknown: Unknown): string {
  switch (unknown.kind) {
    case 'part':
    case 'driver':
      return `${unknown.kind} ${unknown.partId} ${unknown.name}`;
    case 'air':
      return `air ${unknown.branchId}`;
    case 'leak':
      return `leak ${unknown.chamberId}`;
    case 'cable':
      return 'cable';
  }
}
