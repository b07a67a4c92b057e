import { capital } from './document/subject.ts';
import type { ProblemValues, WordingByCode } from './problem.ts';
import { litres, millimetres } from './shortFigures.ts';

/** Sentences of the codes that begin with `build.`. */
export const buildWording: WordingByCode = {
  'build.part-too-large': (v) => ({
    sentence: `“${v.name}” of ${millimetres(v.lengthM)} × ${millimetres(v.widthM)} is larger than the largest board, which is ${millimetres(v.sheetLengthM)} × ${millimetres(v.sheetWidthM)} inside its trimmed edges.`,
    remedy:
      v.turning === 'tried'
        ? 'Choose a larger board, or join the panel from two pieces.'
        : 'Let it be turned across the grain, or choose a larger board.',
  }),
  'build.part-without-size': (v) => ({
    sentence: `“${v.name}” has no size that can be cut, or no whole number of pieces.`,
    remedy: 'State a length and a width above zero, and a whole number.',
  }),
  'build.sheet-without-size': () => ({
    sentence: 'A board in stock has no size, or no whole number.',
    remedy: 'State a length and a width above zero, and a whole number or “unlimited”.',
  }),
  'build.saw-below-zero': () => ({
    sentence: 'The width of the saw cut or of the trimmed edge is not a length.',
    remedy: 'State both as zero or more.',
  }),
  'build.no-stock': () => ({
    sentence: 'There is no board to cut the pieces from.',
    remedy: 'Add a board with its size.',
  }),
  'build.stock-too-short': (v) => ({
    sentence: `The pieces found no place on the ${v.sheets} boards in stock; they need at least ${v.least}.`,
    remedy: 'Add boards, or let pieces be turned.',
  }),
  'build.too-many-pieces': (v) => ({
    sentence: `${v.count} pieces are more than the ${v.most} that one layout takes.`,
    remedy: 'Lay them out in two lots.',
  }),
  'build.cabinet-without-size': () => ({
    sentence: 'A size or a panel thickness of the cabinet is not a length.',
    remedy: 'State width, height, depth and every thickness above zero and below 20 m.',
  }),
  'build.front-too-steep': (v) => ({
    sentence: `The front leans ${degrees(v.slopeRad)} from the vertical, too far for a cabinet.`,
    remedy: 'Let it lean less.',
  }),
  'build.no-inside': (v) => ({
    sentence: `The panels leave no inside in a cabinet of ${millimetres(v.widthM)} × ${millimetres(v.heightM)} × ${millimetres(v.depthM)} at its narrowest.`,
    remedy: 'Make the cabinet larger, its panels thinner, or let the front lean less.',
  }),
  'build.rebate-too-deep': (v) => ({
    sentence: `The rebate at ${v.edge} is ${millimetres(v.depthM)} deep in a panel of ${millimetres(v.thicknessM)}.`,
    remedy: 'Make it above zero and less deep than the panel is thick; half of it is usual.',
  }),
  'build.rebate-on-slope': (v) => ({
    sentence: `A rebate at ${v.edge} is asked for, but the two panels do not meet at a right angle there.`,
    remedy: 'Choose a butt joint or a mitre for that edge.',
  }),
  'build.corner-left-open': (v) => ({
    sentence: `At the corner ${v.corner} each panel ends at the next, which leaves a hole.`,
    remedy: 'Let one of the three run through at both its edges there.',
  }),
  'build.two-mitres-at-corner': (v) => ({
    sentence: `At the corner ${v.corner} two edges are mitred and the third is not, which leaves a hole.`,
    remedy: 'Mitre all three edges there, or one.',
  }),
  'build.mitre-ends-unlike': (v) => ({
    sentence: `At the corner ${v.corner} one of the mitred panels runs past the third panel and the other ends at it.`,
    remedy: 'Let both mitred panels run past it, or both end at it.',
  }),
  'build.unknown-space': (v) => ({
    sentence: `“${v.part}” belongs to a chamber that is not in the cabinet: ${v.name}.`,
    remedy: 'Choose one of the chambers that the dividers make.',
  }),
  'build.divider-outside': (v) => ({
    sentence: `The divider “${v.part}” at ${millimetres(v.atM)} does not part the chamber “${v.name}” in two.`,
    remedy: 'Move it so that air is left on both sides.',
  }),
  'build.chambers-overlap': (v) => ({
    sentence: `The bounds of the chamber “${v.name}” reach into those of another, or cross.`,
    remedy: 'Move its bounds apart from the others, by a panel at least.',
  }),
  'build.brace-outside': (v) => ({
    sentence: `The brace “${v.name}” lies outside its chamber “${v.chamber}”.`,
    remedy: 'Move it inside, or choose the chamber that it stands in.',
  }),
  'build.port-shorter-than-wall': (v) => ({
    sentence: `The port “${v.name}” of ${millimetres(v.lengthM)} is shorter than its panel is thick, ${millimetres(v.thicknessM)}.`,
    remedy: 'Make it at least as long as the panel is thick.',
  }),
  'build.no-air-left': (v) => ({
    sentence: `Chamber “${v.name}” has no air left: ${litres(v.grossM3)} less ${litres(v.takenM3)} for braces, drivers, ports and contents.`,
    remedy: 'Make the cabinet or the chamber larger, or take something out of it.',
  }),
  'build.chamber-not-behind': (v) => ({
    sentence: `${name(v)} goes through the ${v.wall} panel, but its chamber “${v.chamber}” does not lie behind it.`,
    remedy: 'Move it to a wall of that chamber, or choose the chamber that lies behind.',
  }),
  'build.cutout-in-edge': (v) => ({
    sentence: `The cut-out of ${v.name} runs ${millimetres(-Number(v.haveM))} into what stands behind the edge of the ${v.wall} panel.`,
    remedy: 'Move it towards the middle of its chamber, or make the cabinet larger.',
  }),
  'build.web-at-edge': (v) => ({
    sentence: `Between the cut-out of ${v.name} and the inner edge of the ${v.wall} panel ${millimetres(v.haveM)} are left, less than ${millimetres(v.needM)}.`,
    remedy: 'Move it towards the middle.',
  }),
  'build.frame-over-edge': (v) => ({
    sentence: `The frame of ${v.name} reaches ${millimetres(-Number(v.haveM))} over the edge of the cabinet’s ${v.wall}.`,
    remedy: 'Move it towards the middle, or make the cabinet larger.',
  }),
  'build.cutouts-overlap': (v) => ({
    sentence: `The cut-outs of ${v.name} and ${v.other} overlap by ${millimetres(-Number(v.haveM))}.`,
    remedy: 'Move them apart.',
  }),
  'build.frames-overlap': (v) => ({
    sentence: `${name(v)} and ${v.other} overlap by ${millimetres(-Number(v.haveM))} on the ${v.wall}, frames included.`,
    remedy: 'Move them apart.',
  }),
  'build.web-too-thin': (v) => ({
    sentence: `Between the cut-outs of ${v.name} and ${v.other} ${millimetres(v.haveM)} of wood are left, less than ${millimetres(v.needM)}.`,
    remedy: 'Move them apart.',
  }),
  'build.magnet-hits-back': (v) => ({
    sentence: `${name(v)} needs ${millimetres(v.needM)} of depth, and the wall or divider behind it leaves ${millimetres(v.haveM)}.`,
    remedy: 'Make the chamber deeper, or choose a shallower driver.',
  }),
  'build.driver-hits-side': (v) => ({
    sentence: `${name(v)} needs ${millimetres(v.needM)} to a wall beside it, and ${millimetres(v.haveM)} are there.`,
    remedy: 'Move it away from that wall.',
  }),
  'build.driver-meets-brace': (v) => ({
    sentence: `${name(v)} and ${v.other} overlap by ${millimetres(-Number(v.haveM))}.`,
    remedy: 'Move the brace, or cut a window into it.',
  }),
  'build.port-meets-brace': (v) => ({
    sentence: `${name(v)} and ${v.other} overlap by ${millimetres(-Number(v.haveM))}.`,
    remedy: 'Move the brace, or cut a hole for the port into it.',
  }),
  'build.port-meets-driver': (v) => ({
    sentence: `${name(v)} and ${v.other} overlap by ${millimetres(-Number(v.haveM))} inside the cabinet.`,
    remedy: 'Move the port away from the driver, or make it shorter.',
  }),
  'build.drivers-meet': (v) => ({
    sentence: `${name(v)} and ${v.other} overlap by ${millimetres(-Number(v.haveM))} inside the cabinet.`,
    remedy: 'Move them apart, or part them by a divider.',
  }),
  'build.ports-meet': (v) => ({
    sentence: `${name(v)} and ${v.other} overlap by ${millimetres(-Number(v.haveM))} inside the cabinet.`,
    remedy: 'Move them apart.',
  }),
  'build.port-through-back': (v) => ({
    sentence: `${name(v)} is ${millimetres(v.needM)} long, and the wall that it points at is ${millimetres(v.haveM)} away.`,
    remedy: 'Use a narrower port, which is shorter for the same tuning, or bend it.',
  }),
  'build.port-choked': (v) => ({
    sentence: `Behind the end of ${v.name} ${millimetres(v.haveM)} are left; below ${millimetres(v.needM)} the gap is narrower than the port.`,
    remedy: 'Use a narrower port, which is shorter for the same tuning, or bend it.',
  }),
  'build.port-end-near': (v) => ({
    sentence: `Behind the end of ${v.name} ${millimetres(v.haveM)} are left, less than the ${millimetres(v.needM)} that are usual for it (common practice, no source).`,
    remedy: 'Leave that much, or expect a lower tuning than computed.',
  }),
};

/** A name at the start of a sentence. */
const name = (v: ProblemValues): string => capital(String(v.name));

const degrees = (rad: string | number | undefined): string =>
  `${Math.round((Number(rad) * 180) / Math.PI)}°`.replace('-', '−');
