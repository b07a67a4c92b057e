import { chamberHeights, clearDepthM, clearWidthM } from '../../../../../core/document/insideSpace.ts';
import type { Brace, Enclosure } from '../../../../../core/document/schema.ts';
import { innerFrontM } from './innerFront.ts';

type Range = readonly [fromM: number, toM: number];
/** A box: across from the middle, up from the outer bottom, back from the foremost edge; m. */
export interface Block {
  readonly acrossM: Range;
  readonly upM: Range;
  readonly behindM: Range;
}

export interface BraceBoard {
  readonly id: string;
  readonly lies: Brace['lies'];
  readonly wood: Block;
  /** Its openings, drawn as one window of its proportions in its middle, right through the board; null: none. */
  readonly window: Block | null;
}

/** The braces as boxes right across their chambers. Where the cabinet leans or narrows, with the sizes at the brace's middle. */
export const braceBoards = (enclosure: Enclosure): BraceBoard[] =>
  enclosure.wood.braces.map((brace) => boardOf(brace, enclosure));

function boardOf(brace: Brace, enclosure: Enclosure): BraceBoard {
  const { lies, atM, thicknessM, openShare } = brace;
  const chamber = enclosure.chambers.find(({ id }) => id === brace.chamberId);
  const { bottomM, topM } = chamber ? chamberHeights(chamber, enclosure) : { bottomM: 0, topM: enclosure.heightM };
  const yM = lies === 'level' ? atM : (bottomM + topM) / 2;
  const clear = clearDepthM(enclosure, yM);
  const depthM = chamber?.volume.kind === 'geometry' ? Math.min(chamber.volume.depthM ?? clear, clear) : clear;
  const frontM = innerFrontM(enclosure, yM);
  const half = clearWidthM(enclosure, lies === 'across' ? atM : frontM + depthM / 2) / 2;
  const thick: Range = [atM - thicknessM / 2, atM + thicknessM / 2];
  const space: Block = { acrossM: [-half, half], upM: [bottomM, topM], behindM: [frontM, frontM + depthM] };
  const side = Math.sqrt(openShare);
  const inMiddle = ([from, to]: Range): Range => {
    const middle = (from + to) / 2;
    const reach = ((to - from) / 2) * side;
    return [middle - reach, middle + reach];
  };
  const axis = AXIS[lies];
  const opening: Block = {
    acrossM: inMiddle(space.acrossM),
    upM: inMiddle(space.upM),
    behindM: inMiddle(space.behindM),
    [axis]: thick,
  };
  return { id: brace.id, lies, wood: { ...space, [axis]: thick }, window: openShare > 0 ? opening : null };
}

const AXIS: Readonly<Record<Brace['lies'], keyof Block>> = { level: 'upM', across: 'behindM', lengthwise: 'acrossM' };
