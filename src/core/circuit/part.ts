/** What every part of a network has: a name unique in it and two named nodes. Node `0` is the return. */
interface PartBase {
  readonly id: string;
  /** A speaker's or an amplifier's first node is its plus terminal. */
  readonly nodes: readonly [string, string];
  readonly note: string;
}

export type Resistor = PartBase & {
  readonly kind: 'resistor';
  readonly ohm: number;
  readonly ratedPowerW: number | null;
};
export type Capacitor = PartBase & { readonly kind: 'capacitor'; readonly farad: number; readonly esrOhm: number };
/** `coreLossTangent` is 0 for an air coil; a core adds the series resistance ωL·tanδ (hysteresis at small signals). */
export type Inductor = PartBase & {
  readonly kind: 'inductor';
  readonly henry: number;
  readonly dcrOhm: number;
  readonly coreLossTangent: number;
};
/** A link that can be taken off, as between bi-wire terminals. */
export type Jumper = PartBase & { readonly kind: 'jumper' };
export type Speaker = PartBase & { readonly kind: 'speaker'; readonly driverId: string };
/** An amplifier channel: its output terminal and its return. */
export type Amplifier = PartBase & { readonly kind: 'amplifier' };

export type Part = Resistor | Capacitor | Inductor | Jumper | Speaker | Amplifier;
export type PartKind = Part['kind'];
