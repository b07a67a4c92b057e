import { chamberHeights } from '../../../core/document/insideSpace.ts';
import type { Brace, Chamber, Enclosure } from '../../../core/document/schema.ts';
import { freshId } from '../../../core/document/start/freshId.ts';

/** Shares of the height at which braces come one after another. */
const PLACES = [0.5, 0.25, 0.75, 0.375, 0.625] as const;
const HALF_OPEN = 0.5;

/** Where a brace that lies so stands at first: at a share of the chamber's height, half way back, or in the middle. */
export function braceAtM(lies: Brace['lies'], chamber: Chamber, enclosure: Enclosure, share = 0.5): number {
  if (lies === 'lengthwise') return 0;
  if (lies === 'across') return enclosure.depthM / 2;
  const { bottomM, topM } = chamberHeights(chamber, enclosure);
  return bottomM + share * (topM - bottomM);
}

/** A level brace of the panels' thickness, half of it open, where the chamber has none yet. */
export function newBrace(chamber: Chamber, enclosure: Enclosure): Brace {
  const { braces } = enclosure.wood;
  const here = braces.filter(({ chamberId, lies }) => chamberId === chamber.id && lies === 'level').length;
  return {
    id: freshId('brace', braces),
    chamberId: chamber.id,
    lies: 'level',
    atM: braceAtM('level', chamber, enclosure, PLACES[here % PLACES.length]),
    thicknessM: enclosure.panelM,
    openShare: HALF_OPEN,
  };
}
