import type { Project } from '../../core/document/schema.ts';
import { formatNumber } from '../../core/units/formatNumber.ts';
import { Length } from './Length.tsx';

const THROUGH = { sides: 'the sides running through', 'top-and-bottom': 'top and bottom running through' } as const;

function jointWords({ joint, through, rebateM }: Project['enclosure']['wood']): string {
  if (joint === 'mitre') return 'sides, top and bottom mitred, front and back between them';
  if (joint === 'butt') return `butt joints, ${THROUGH[through]}, front and back between all four`;
  return `rebates ${formatNumber(rebateM * 1000, 3)} mm deep, ${THROUGH[through]}, front and back between all four`;
}

/** What the sheet is of: it must stand for itself when it hangs in a workshop. */
export function SheetHead({ project, cabinets }: { readonly project: Project; readonly cabinets: number }) {
  const { widthM, heightM, depthM, wood } = project.enclosure;
  return (
    <header className="build-head">
      <p className="build-project">{project.name}</p>
      <p>
        {cabinets === 1 ? 'One cabinet' : `${cabinets} cabinets`}, outside{' '}
        <Length of={[widthM, ' wide × ', heightM, ' high × ', depthM, ' deep']} />, in mm and inches
        {wood.backWidthM === null ? '' : `, ${formatNumber(wood.backWidthM * 1000, 4)} mm wide at the back`}
        {wood.frontLeanDeg === 0 ? '' : `, front leaning back by ${formatNumber(wood.frontLeanDeg, 3)}°`};{' '}
        {jointWords(wood)}.
      </p>
    </header>
  );
}
