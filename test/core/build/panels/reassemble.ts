import type { Panel, PanelPoint } from '../../../../src/core/build/index.ts';

// Wood from what the cut list says, with nothing of the solids that made it: a board between two faces by the prismoidal
// rule, less its steps.

const area = (points: readonly PanelPoint[]): number =>
  Math.abs(
    points.reduce((sum, [x, y], i) => {
      const [nextX, nextY] = points[(i + 1) % points.length]!;
      return sum + x * nextY - nextX * y;
    }, 0),
  ) / 2;

export const boardVolume = ({ outerFace, innerFace, thicknessM }: Panel): number => {
  if (outerFace.length !== innerFace.length) throw new Error('faces with unlike corners');
  const middle = outerFace.map(([x, y], i): PanelPoint => [(x + innerFace[i]![0]) / 2, (y + innerFace[i]![1]) / 2]);
  return (thicknessM / 6) * (area(outerFace) + 4 * area(middle) + area(innerFace));
};
export const woodVolume = (panel: Panel): number =>
  boardVolume(panel) - panel.rebates.reduce((sum, { depthM, widthM, runM }) => sum + depthM * widthM * runM, 0);

/** Wood of every wall that the cut list names, m³. */
export const reassemble = (panels: readonly Panel[]): number =>
  panels.filter(({ kind }) => kind === 'wall').reduce((sum, panel) => sum + woodVolume(panel), 0);
