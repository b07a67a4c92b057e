import { chamberHeights, clearDepthM, clearHeights, frontSetbackM, thicknessOfM } from '../../document/insideSpace.ts';
import type { Chamber, Enclosure } from '../../document/schema.ts';
import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { type Divider, WHOLE_INSIDE } from '../panels/index.ts';

/** Bounds closer than this to one another or to a wall meet. */
const MEETS_M = 5e-4;

/** Name of the space that no chamber has: above, below or behind those that are given by bounds. */
export const unusedSpace = (number: number): string => `unused ${number}`;

interface Cut {
  readonly atM: number;
  readonly thicknessM: number;
}

/**
 * Boards between the chambers that are given by their bounds, from the bottom up, then the boards behind those that are less deep than
 * the cabinet. A gap of at most two panels between chambers is one board; a wider one is a space of its own between two.
 * Chambers of stated size have no place and no boards. Problem: `build.chambers-overlap`.
 */
export function dividersOf(enclosure: Enclosure): Result<readonly Divider[]> {
  const { panelM } = enclosure;
  const clear = clearHeights(enclosure);
  const stack = enclosure.chambers
    .filter((chamber) => chamber.volume.kind === 'geometry')
    .map((chamber) => ({ chamber, ...chamberHeights(chamber, enclosure) }))
    .sort((a, b) => a.bottomM - b.bottomM);
  const dividers: Divider[] = [];
  let unused = 0;
  let above = WHOLE_INSIDE;
  let reachedM = clear.bottomM;
  const cut = ({ atM, thicknessM }: Cut, below: string, next: string): void => {
    const id = `divider ${dividers.length + 1}`;
    dividers.push({ id, parts: above, axis: 'y', atM, thicknessM, below, above: next });
    above = next;
  };
  let lower: string | null = null;
  for (const { chamber, bottomM, topM } of stack) {
    const gapM = bottomM - reachedM;
    if (gapM < -MEETS_M || !(topM > bottomM)) {
      const place = { kind: 'chamber', id: chamber.id } as const;
      return fail(problem('build.chambers-overlap', place, { name: chamber.name }));
    }
    const rest = `over ${chamber.id}`;
    if (gapM > MEETS_M && lower !== null && gapM <= 2 * panelM) {
      cut({ atM: reachedM, thicknessM: gapM }, lower, rest);
    } else if (gapM > MEETS_M) {
      unused += 1;
      if (lower !== null) cut({ atM: reachedM, thicknessM: panelM }, lower, `between ${unused}`);
      cut({ atM: bottomM - panelM, thicknessM: panelM }, unusedSpace(unused), rest);
    }
    reachedM = topM;
    lower = chamber.id;
  }
  if (lower !== null && clear.topM - reachedM > panelM + MEETS_M) {
    cut({ atM: reachedM, thicknessM: panelM }, lower, unusedSpace(unused + 1));
    unused += 1;
  } else if (lower !== null) {
    rename(dividers, above, lower);
  }
  return succeed([...dividers, ...boardsBehind(stack, enclosure, unused, dividers.length > 0)]);
}

/** The highest space takes its chamber's name; a single chamber that fills the cabinet leaves no board to rename. */
function rename(dividers: Divider[], from: string, to: string): void {
  const last = dividers.at(-1);
  if (last !== undefined && last.above === from) dividers[dividers.length - 1] = { ...last, above: to };
}

function boardsBehind(
  stack: readonly { readonly chamber: Chamber; readonly bottomM: number; readonly topM: number }[],
  enclosure: Enclosure,
  used: number,
  parted: boolean,
): Divider[] {
  const { panelM } = enclosure;
  return stack.flatMap(({ chamber, bottomM, topM }, i) => {
    const depthM = chamber.volume.kind === 'geometry' ? chamber.volume.depthM : null;
    const middleM = (bottomM + topM) / 2;
    const clearM = clearDepthM(enclosure, middleM);
    if (depthM === null || depthM > clearM - panelM - MEETS_M) return [];
    const innerFrontM = enclosure.depthM - thicknessOfM(enclosure, 'back') - clearM;
    const atM = -(Math.max(innerFrontM, frontSetbackM(enclosure, middleM)) + depthM + panelM);
    return [
      {
        id: `board behind ${chamber.id}`,
        // A single chamber that fills the height is the whole inside until this board.
        parts: parted ? chamber.id : WHOLE_INSIDE,
        axis: 'z' as const,
        atM,
        thicknessM: panelM,
        below: unusedSpace(used + i + 1),
        above: chamber.id,
      },
    ];
  });
}
