import type { Brace } from '../../../../../../core/document/schema.ts';
import { onFront, onSide } from '../../cabinetDrawing.ts';
import { chain, secondRow } from './besideViews.ts';
import type { DimensionField, Drawn } from './dimensionField.ts';

/** Where the braces are. */
export function braceFields({ drawing, enclosure, typeScale }: Drawn): DimensionField[] {
  const all = enclosure.wood.braces;
  const words: Record<Brace['lies'], string> = {
    level: 'Height',
    across: 'Depth behind the front',
    lengthwise: 'Place across',
  };
  return all.map((brace, k): DimensionField => {
    const place = { side: drawing.side!, pxPerM: drawing.pxPerM };
    const [from, to] =
      brace.lies === 'across'
        ? [onSide(place, 0, 0).xPx, onSide(place, brace.atM, 0).xPx]
        : [onFront(drawing, 0, 0).xPx, onFront(drawing, brace.atM, 0).xPx];
    return {
      key: `brace ${brace.id}`,
      label: `${words[brace.lies]} of brace ${k + 1}`,
      kind: 'length',
      value: brace.atM,
      ...(brace.lies === 'level' ? { anchor: 'left' as const } : {}),
      command: (atM) => ({
        type: 'set-wood',
        changes: { braces: all.map((one) => (one.id === brace.id ? { ...one, atM } : one)) },
      }),
      places: brace.lies === 'level' ? chain(drawing, brace.atM, typeScale) : [secondRow(drawing, from, to, typeScale)],
    };
  });
}
