/** One thing that can be wrong with a built loudspeaker, as data. */
export type Fault =
  | { readonly kind: 'part-open' | 'part-short' | 'part-value'; readonly partId: string }
  /** Ten times too much or too little, within the usual tolerance of that. */
  | { readonly kind: 'part-decade'; readonly partId: string; readonly factor: number }
  /** Two parts of a kind, or two drivers, each in the place of the other. */
  | { readonly kind: 'exchanged'; readonly partIds: readonly [string, string] }
  /** The end (0 first, 1 second) of a part that is connected to `node` and should not be. */
  | { readonly kind: 'wrong-node'; readonly partId: string; readonly end: 0 | 1; readonly node: string }
  | { readonly kind: 'link-missing'; readonly partId: string }
  | { readonly kind: 'driver-open' | 'driver-reversed' | 'driver-resonance'; readonly partId: string }
  | { readonly kind: 'leak'; readonly chamberId: string }
  | { readonly kind: 'port-blocked' | 'port-length'; readonly portId: string }
  /** Resistance before the terminals at which the impedance was taken. */
  | { readonly kind: 'cable' };

export type FaultKind = Fault['kind'];

/** A name for each fault that no other has, for comparing and sorting. */
export function faultKey(fault: Fault): string {
  switch (fault.kind) {
    case 'part-decade':
      return `${fault.kind} ${fault.partId} ${fault.factor}`;
    case 'exchanged':
      return `${fault.kind} ${[...fault.partIds].sort().join(' ')}`;
    case 'wrong-node':
      return `${fault.kind} ${fault.partId} ${fault.end} ${fault.node}`;
    case 'leak':
      return `${fault.kind} ${fault.chamberId}`;
    case 'port-blocked':
    case 'port-length':
      return `${fault.kind} ${fault.portId}`;
    case 'cable':
      return fault.kind;
    default:
      return `${fault.kind} ${fault.partId}`;
  }
}

/** Parts, chambers and ports that a fault is about. */
export const placesOf = (fault: Fault): readonly string[] => {
  if (fault.kind === 'cable') return ['cable'];
  if (fault.kind === 'exchanged') return fault.partIds;
  if (fault.kind === 'leak') return [fault.chamberId];
  return ['portId' in fault ? fault.portId : fault.partId];
};
