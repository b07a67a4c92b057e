import type { CSSProperties } from 'react';
import { wayStyle } from '../../plot/wayStyle.ts';

/**
 * Sets the CSS properties `--way` and `--way-dash` to colour and dash pattern of the way with this index, for everything
 * inside the element: the same as its curve in the plots. null: no way, plain and solid.
 */
export function wayColour(index: number | null): CSSProperties {
  if (index === null) return { '--way': 'var(--soft)', '--way-dash': 'none' } as CSSProperties;
  const { colour, dash, widthPx } = wayStyle(index);
  const pattern = dash.map((length) => (length * widthPx).toFixed(1)).join(' ');
  return { '--way': `var(${colour})`, '--way-dash': pattern === '' ? 'none' : pattern } as CSSProperties;
}
