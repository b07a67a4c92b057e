import { fail, problem, type Result, succeed } from '../../../messages/problem.ts';
import type { Driver, Project } from '../../schema.ts';
import type { Applier } from '../applier.ts';
import { replaceWhere } from '../replaceWhere.ts';
import { withChanges } from '../withChanges.ts';

const unknown = (id: string): Result<never> => fail(problem('document.unknown-curve', { kind: 'curve', id }));

export const addCurve: Applier<'add-curve'> = (project, { curve }) =>
  succeed({ ...project, curves: [...project.curves, curve] });

export const setCurve: Applier<'set-curve'> = (project, { id, changes }) => {
  if (!project.curves.some((curve) => curve.id === id)) return unknown(id);
  const curves = replaceWhere(
    project.curves,
    (curve) => curve.id === id,
    (curve) => withChanges(curve, changes),
  );
  return succeed(withChanges(project, { curves }));
};

/** Drivers that used the curve go back to their model; a kept state that uses it must be dropped before. */
export const removeCurve: Applier<'remove-curve'> = (project, { id }) => {
  const curve = project.curves.find((candidate) => candidate.id === id);
  if (!curve) return unknown(id);
  const state = project.snapshots.find((candidate) => candidate.drivers.some((driver) => uses(driver, id)));
  if (state) {
    const values = { name: curve.name, keptState: state.name };
    return fail(problem('document.curve-in-use', { kind: 'curve', id }, values));
  }
  const drivers = replaceWhere(
    project.drivers,
    (driver) => uses(driver, id),
    (driver) => ({ ...driver, measured: withoutCurve(driver.measured, id) }),
  );
  return succeed({ ...project, drivers, curves: project.curves.filter((candidate) => candidate !== curve) });
};

const uses = ({ measured }: Driver, id: string) =>
  measured?.responseCurveId === id || measured?.impedanceCurveId === id;

function withoutCurve(measured: Project['drivers'][number]['measured'], id: string): Driver['measured'] {
  if (measured === null) return null;
  const responseCurveId = measured.responseCurveId === id ? null : measured.responseCurveId;
  const impedanceCurveId = measured.impedanceCurveId === id ? null : measured.impedanceCurveId;
  return responseCurveId === null && impedanceCurveId === null
    ? null
    : { ...measured, responseCurveId, impedanceCurveId };
}
