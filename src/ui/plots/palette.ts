/** Colours by CSS variable name, as the theme has them now: a canvas cannot look them up itself. */
export type Palette = (name: string) => string;

/** Reads the theme as it stands at `element`; read again when the theme changes. */
export function readPalette(element: Element): Palette {
  const style = getComputedStyle(element);
  const known = new Map<string, string>();
  return (name) => {
    const colour = known.get(name) ?? style.getPropertyValue(name).trim();
    known.set(name, colour);
    return colour;
  };
}
