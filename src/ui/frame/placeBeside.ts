const GAP_PX = 6;
const EDGE_PX = 8;

/**
 * Puts a panel of fixed position below what it belongs to, or above where there is more room and it needs it; never beyond
 * the window. A panel that is higher than the room scrolls.
 */
export function placeBeside(from: DOMRect, panel: HTMLElement): void {
  const { style } = panel;
  const below = window.innerHeight - from.bottom - GAP_PX - EDGE_PX;
  const above = from.top - GAP_PX - EDGE_PX;
  const goesBelow = panel.scrollHeight <= below || below >= above;
  style.left = `${Math.max(EDGE_PX, Math.min(from.left, window.innerWidth - panel.offsetWidth - EDGE_PX))}px`;
  style.top = goesBelow ? `${from.bottom + GAP_PX}px` : 'auto';
  style.bottom = goesBelow ? 'auto' : `${window.innerHeight - from.top + GAP_PX}px`;
  style.maxHeight = `${Math.max(120, goesBelow ? below : above)}px`;
}
