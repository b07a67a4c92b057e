/** Space kept between an opened box and the edges of the window. */
const EDGE_PX = 6;
const GAP_PX = 4;
/** The first line of a box laid over its anchor sits this far below the box's top. */
const FIRST_LINE_PX = 15;

/**
 * Shows a box above the whole page and places it at its anchor, in page coordinates, so that it scrolls with it.
 *
 * `over` lays the box's first line over the anchor; `beside` sets it below the anchor where that fits, else at its right
 * or left, so that what stands above stays in sight. The element must carry the attribute popover="manual"; it never
 * leaves the window.
 */
export function placeInPage(box: HTMLElement, anchor: DOMRect, how: 'over' | 'beside'): void {
  if (!box.matches(':popover-open')) box.showPopover();
  const { clientWidth, clientHeight } = document.documentElement;
  const { offsetWidth: width, offsetHeight: height } = box;
  let left = anchor.left + (anchor.width - width) / 2;
  let top = anchor.top + anchor.height / 2 - FIRST_LINE_PX;
  if (how === 'beside') {
    const fitsBelow = anchor.bottom + GAP_PX + height <= clientHeight - EDGE_PX;
    const fitsRight = anchor.right + GAP_PX + width <= clientWidth - EDGE_PX;
    if (fitsBelow) {
      top = anchor.bottom + GAP_PX;
    } else {
      left = fitsRight ? anchor.right + GAP_PX : anchor.left - GAP_PX - width;
      top = clientHeight - EDGE_PX - height;
    }
  }
  left = Math.max(EDGE_PX, Math.min(left, clientWidth - width - EDGE_PX));
  box.style.left = `${left + window.scrollX}px`;
  box.style.top = `${Math.max(EDGE_PX, top) + window.scrollY}px`;
}
