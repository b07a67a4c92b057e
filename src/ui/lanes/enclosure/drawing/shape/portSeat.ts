import type { Enclosure, Port } from '../../../../../core/document/schema.ts';
import { sideChambers } from '../../sideChambers.ts';
import { innerFrontM } from './innerFront.ts';

/** Where a port between two chambers is drawn: upright through their board, from the far chamber's face of it into its own chamber. */
export interface PortSeat {
  readonly upM: number;
  readonly towards: 'up' | 'down';
  /** The document has no depth for it: the middle. */
  readonly behindM: number;
}

/** null: the port leads outside and sits on its face. */
export function portSeat(port: Port, enclosure: Enclosure): PortSeat | null {
  if (port.toChamberId === null) return null;
  const chambers = sideChambers(enclosure);
  const own = chambers.find(({ id }) => id === port.chamberId);
  const far = chambers.find(({ id }) => id === port.toChamberId);
  if (!own || !far) return { upM: port.yM, towards: 'up', behindM: enclosure.depthM / 2 };
  const isAbove = own.bottomM + own.topM >= far.bottomM + far.topM;
  const upM = isAbove ? far.topM : far.bottomM;
  const from = innerFrontM(enclosure, upM);
  // Behind the middle, where a driver on the same board is drawn, as far as there is depth.
  return { upM, towards: isAbove ? 'up' : 'down', behindM: from + 0.8 * (Math.min(own.backM, far.backM) - from) };
}
