import type { Part } from '../circuit/part.ts';
import type {
  Air,
  Chain,
  Chamber,
  Curve,
  Driver,
  Enclosure,
  Line,
  Listening,
  Mount,
  PassiveRadiator,
  Port,
  Wood,
} from './schema.ts';

/** Omit over each member of a union. */
type Without<T, K extends PropertyKey> = T extends unknown ? Omit<T, K> : never;

/** A part that does not yet have a name or nodes: the command that places it gives both. */
export type NewPart = Without<Part, 'id' | 'nodes'>;

/** Values of a part that can be set; a field that the part does not have is refused. */
export interface PartValues {
  readonly ohm?: number;
  readonly ratedPowerW?: number | null;
  readonly farad?: number;
  readonly esrOhm?: number;
  readonly henry?: number;
  readonly dcrOhm?: number;
  readonly coreLossTangent?: number;
  readonly driverId?: string;
  readonly note?: string;
}

type Id = { readonly id: string };

/**
 * Every edit, as plain data. Pure functions apply them (`applyCommand`), so undo, tests, the log and sharing speak the
 * same language. A command that cannot be carried out returns Problems and leaves the document as it was.
 */
export type Command =
  | { readonly type: 'set-name'; readonly name: string }
  | { readonly type: 'set-notes'; readonly notes: string }
  | { readonly type: 'set-air'; readonly changes: Partial<Air> }
  | { readonly type: 'set-listening'; readonly changes: Partial<Listening> }
  | { readonly type: 'set-drive'; readonly driveV: number }
  | {
      readonly type: 'set-amplifier';
      readonly id: string;
      readonly changes: Partial<Omit<Chain['amplifiers'][number], 'id'>>;
    }
  // Network: graph operations that keep the circuit whole.
  | { readonly type: 'set-part'; readonly partId: string; readonly changes: PartValues }
  /** Another kind or value in the same place, between the same nodes. */
  | { readonly type: 'swap-part'; readonly partId: string; readonly part: NewPart }
  /** Opens the wire at one end of `partId` and puts the new part there. */
  | { readonly type: 'insert-in-series'; readonly partId: string; readonly end: 0 | 1; readonly part: NewPart }
  | { readonly type: 'add-across'; readonly nodes: readonly [string, string]; readonly part: NewPart }
  | { readonly type: 'move-end'; readonly partId: string; readonly end: 0 | 1; readonly to: string }
  /** `close-up` joins what the part stood between; `leave-open` leaves a gap. Speakers and amplifiers are not removed so. */
  | { readonly type: 'remove-part'; readonly partId: string; readonly how: 'close-up' | 'leave-open' }
  | { readonly type: 'rename-part'; readonly partId: string; readonly to: string }
  | { readonly type: 'reverse-speaker'; readonly partId: string }
  /**
   * A textbook section before a speaker: its parts name nodes `@in`, `@out`, `0` and inner nodes `@1`, `@2`...; `@in` is
   * where the speaker's hot terminal was, `@out` where it now is. Sections with `@out` only (across the speaker) leave it.
   */
  | { readonly type: 'insert-section'; readonly speakerId: string; readonly parts: readonly Part[] }
  /** The whole network, as pasted netlist text gives it; speakers keep their drivers by name. */
  | { readonly type: 'replace-network'; readonly parts: readonly Part[] }
  /** Takes an amplifier channel and its settings away; the last one stays. A second one comes by `add-across`. */
  | { readonly type: 'remove-amplifier'; readonly id: string }
  // Ways and drivers.
  | { readonly type: 'add-way'; readonly driver: Driver; readonly mount: Omit<Mount, 'partId'> }
  /** The speaker, its mount, the parts that feed it alone, and its driver where no other speaker uses it. */
  | { readonly type: 'remove-way'; readonly speakerId: string }
  | { readonly type: 'set-driver'; readonly driverId: string; readonly changes: Partial<Omit<Driver, 'id'>> }
  // Enclosure.
  | {
      readonly type: 'set-enclosure';
      readonly changes: Partial<Pick<Enclosure, 'widthM' | 'heightM' | 'depthM' | 'panelM'>>;
    }
  /** How it is made of wood; braces and board are replaced whole. */
  | { readonly type: 'set-wood'; readonly changes: Partial<Wood> }
  | { readonly type: 'add-chamber'; readonly chamber: Chamber }
  | ({ readonly type: 'set-chamber'; readonly changes: Partial<Omit<Chamber, 'id'>> } & Id)
  | ({ readonly type: 'remove-chamber' } & Id)
  | { readonly type: 'add-port'; readonly port: Port }
  | ({ readonly type: 'set-port'; readonly changes: Partial<Omit<Port, 'id'>> } & Id)
  | ({ readonly type: 'remove-port' } & Id)
  | { readonly type: 'add-radiator'; readonly radiator: PassiveRadiator }
  | ({ readonly type: 'set-radiator'; readonly changes: Partial<Omit<PassiveRadiator, 'id'>> } & Id)
  | ({ readonly type: 'remove-radiator' } & Id)
  | { readonly type: 'add-line'; readonly line: Line }
  | ({ readonly type: 'set-line'; readonly changes: Partial<Omit<Line, 'id'>> } & Id)
  | ({ readonly type: 'remove-line' } & Id)
  | { readonly type: 'set-mount'; readonly partId: string; readonly changes: Partial<Omit<Mount, 'partId'>> }
  // Curves.
  | { readonly type: 'add-curve'; readonly curve: Curve }
  | ({ readonly type: 'set-curve'; readonly changes: Partial<Omit<Curve, 'id'>> } & Id)
  | ({ readonly type: 'remove-curve' } & Id)
  // Kept states, two at most.
  | { readonly type: 'keep-state'; readonly name: string }
  | ({ readonly type: 'drop-state' } & Id)
  /** The kept state becomes the present one; it stays kept. */
  | ({ readonly type: 'return-to-state' } & Id)
  /** Several as one. */
  | { readonly type: 'together'; readonly commands: readonly Command[] };

export type CommandType = Command['type'];
/** The command of one type. */
export type CommandOf<T extends CommandType> = Extract<Command, { readonly type: T }>;
