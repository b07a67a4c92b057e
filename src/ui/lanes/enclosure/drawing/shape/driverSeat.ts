import type { Enclosure, Mount } from '../../../../../core/document/schema.ts';
import { type SideChamber, sideChambers } from '../../sideChambers.ts';
import { innerFrontM } from './innerFront.ts';

/** On what a driver sits: the front panel, or the level board between two chambers, facing up or down. */
export type DriverSeat =
  | { readonly kind: 'front' }
  | {
      readonly kind: 'board';
      /** Height of the board's face that the rim lies on, and how thick the board is. */
      readonly upM: number;
      readonly boardM: number;
      readonly faces: 'up' | 'down';
      /** Its axis behind the foremost edge: the document has no depth for it, so the middle of the board. */
      readonly behindM: number;
      /** Whether both chambers have bounds, so that there is a board at all. */
      readonly isPlaced: boolean;
    };

/** Where a driver is drawn. One between two chambers sits on the board between them, its front towards `frontChamberId`. */
export function driverSeat(mount: Mount, enclosure: Enclosure): DriverSeat {
  if (mount.frontChamberId === null) return { kind: 'front' };
  const chambers = sideChambers(enclosure);
  const front = chambers.find(({ id }) => id === mount.frontChamberId);
  const rear = chambers.find(({ id }) => id === mount.chamberId);
  const at = (upM: number, boardM: number, faces: 'up' | 'down', isPlaced: boolean): DriverSeat => {
    const from = innerFrontM(enclosure, upM);
    const to = Math.min(...[front, rear].map((chamber) => chamber?.backM ?? enclosure.depthM - enclosure.panelM));
    return { kind: 'board', upM, boardM, faces, behindM: (from + Math.max(from, to)) / 2, isPlaced };
  };
  if (!front || !rear) return at(mount.yM, 0, 'up', false);
  const isPlaced = !front.stated && !rear.stated;
  if (middleOf(front) >= middleOf(rear))
    return at(front.bottomM, Math.max(0, front.bottomM - rear.topM), 'up', isPlaced);
  return at(front.topM, Math.max(0, rear.bottomM - front.topM), 'down', isPlaced);
}

const middleOf = ({ bottomM, topM }: SideChamber): number => (bottomM + topM) / 2;
