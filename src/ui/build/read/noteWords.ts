import type { EdgeNote, Panel } from '../../../core/build/panels/index.ts';
import { formatNumber } from '../../../core/units/formatNumber.ts';

const millimetres = (m: number): string => formatNumber(m * 1000, 4);

/** What is done to the edges of a panel: @example noteWords(note, 'up') // 'mitre 45° along the length, 2 edges' */
export function noteWords(note: EdgeNote, grain: Panel['grain']): string {
  const lengthwise = (note.runs === 'across') === (grain === 'across');
  const where = `along the ${lengthwise ? 'length' : 'width'}, ${note.count} ${note.count === 1 ? 'edge' : 'edges'}`;
  if (note.kind === 'rebate') {
    const stopped = note.stopped ? ', not run out at both ends' : '';
    return `rebate ${millimetres(note.depthM)} mm deep × ${millimetres(note.widthM)} mm wide ${where}${stopped}`;
  }
  const angle = `${formatNumber(Math.abs(note.angleDeg), 3)}°`;
  const side = note.angleDeg > 0 ? '' : ', inner face the larger';
  return `${note.kind} ${angle} ${where}${side}`;
}

/** Corners of the outer face of a panel that is no rectangle, from its lower left corner; null for a rectangle. */
export function cornerWords({ shape, outerFace }: Panel): string | null {
  if (shape === 'rectangle') return null;
  const corners = outerFace.map(([acrossM, upM]) => `${millimetres(acrossM)} | ${millimetres(upM)}`);
  return `tapered; corners of the outer face at ${corners.join(', ')} mm (across | up)`;
}
