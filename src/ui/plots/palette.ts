/** Colours by CSS variable name, as the theme has them now: a canvas cannot look them up itself. */
export type Palette = (name: string) => string;

/**
 * Reads the theme as it stands at `element`; read again when the theme changes. A variable may hold a pair for light and
 * dark, which only a property that is a colour resolves: the element's own text colour is lent for a moment.
 */
export function readPalette(element: HTMLElement): Palette {
  const style = getComputedStyle(element);
  const known = new Map<string, string>();
  return (name) => {
    let colour = known.get(name);
    if (colour === undefined) {
      element.style.color = `var(${name})`;
      colour = style.color;
      element.style.color = '';
      known.set(name, colour);
    }
    return colour;
  };
}
