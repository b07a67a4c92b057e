import { type EdgeNote, type Panel, workshopLength } from '../../../core/build/panels/index.ts';
import { formatNumber } from '../../../core/units/formatNumber.ts';

const millimetres = (m: number): string => workshopLength(m).millimetres.replace(/^-0$/, '0');
const degrees = (deg: number): string => `${formatNumber(Math.abs(deg), 3)}°`;

/** A mitre or a rebate in words: @example noteWords(note, 'up') // 'mitre 45° along the length, 2 edges' */
export function noteWords(note: EdgeNote, grain: Panel['grain']): string {
  const lengthwise = (note.runs === 'across') === (grain === 'across');
  const where = `along the ${lengthwise ? 'length' : 'width'}, ${note.count} ${note.count === 1 ? 'edge' : 'edges'}`;
  if (note.kind !== 'rebate') return `${note.kind} ${degrees(note.angleDeg)} ${where}`;
  const stopped = note.stopped ? ', not run out at both ends' : '';
  return `rebate ${millimetres(note.depthM)} mm deep × ${millimetres(note.widthM)} mm wide ${where}${stopped}`;
}

/** Edges that are sawn askew, each by what it meets and which face it leaves the larger: they are not alike. */
export function bevelWords({ edges }: Panel): readonly string[] {
  const meets = new Map<string, string[]>();
  for (const edge of edges) {
    const deg = Math.round((edge.bevelRad * 1800) / Math.PI) / 10;
    if (deg === 0 || edge.joint === 'mitre') continue;
    const text = `bevel ${degrees(deg)}, ${deg > 0 ? 'outer' : 'inner'} face the larger, at the edge to `;
    meets.set(text, [...(meets.get(text) ?? []), edge.meets]);
  }
  return [...meets].map(([text, walls]) => text + walls.join(' and '));
}

/** Corners of the outer face of a panel that is no rectangle, from its lower left corner; null for a rectangle. */
export function cornerWords({ shape, outerFace }: Panel): string | null {
  if (shape === 'rectangle') return null;
  const corners = outerFace.map(([acrossM, upM]) => `${millimetres(acrossM)} | ${millimetres(upM)}`);
  return `tapered; corners of the outer face at ${corners.join(', ')} mm (across | up)`;
}
