import { describe, expect, it } from 'vitest';
import { withNames } from '../../../../src/core/document/checks/withNames.ts';
import { problem } from '../../../../src/core/messages/problem.ts';
import { twoWay } from '../twoWay.ts';

const [driver] = twoWay.drivers;
const [chamber] = twoWay.enclosure.chambers;
const [port] = twoWay.enclosure.ports;
const [curve] = twoWay.curves;
const nameAt = (kind: 'driver' | 'chamber' | 'port' | 'curve' | 'part', id: string, project = twoWay) =>
  withNames(problem('x.y', { kind, id }), project).values.name;

describe('withNames', () => {
  it('adds what the thing at the place is called, and leaves the place', () => {
    expect(nameAt('driver', driver!.id)).toBe(driver!.name);
    expect(nameAt('chamber', chamber!.id)).toBe(chamber!.name);
    expect(nameAt('curve', curve!.id)).toBe(curve!.name);
    expect(nameAt('port', port!.id)).toBe('the port');
    expect(withNames(problem('x.y', { kind: 'driver', id: driver!.id }), twoWay).place.id).toBe(driver!.id);
  });

  it('tells ports apart by the id that the screen shows', () => {
    const ports = [port!, { ...port!, id: 'P7' }, { ...port!, id: 'port-2' }];
    const three = { ...twoWay, enclosure: { ...twoWay.enclosure, ports } };
    expect(nameAt('port', 'P7', three)).toBe('port P7');
    expect(nameAt('port', 'port-2', three)).toBe('port 2');
  });

  it('turns ids among the values into names, and leaves what nothing has', () => {
    const values = { driverId: driver!.id, chamberId: 'gone', partId: 'LS1', sharedM: 1 };
    expect(withNames(problem('x.y', { kind: 'document' }, values), twoWay).values).toEqual({
      ...values,
      driverId: driver!.name,
    });
    const flaw = problem('x.y', { kind: 'part', id: 'LS1' }, { ohm: 1 });
    expect(withNames(flaw, twoWay)).toBe(flaw);
  });

  it('keeps a name that the problem brings', () => {
    const flaw = problem('x.y', { kind: 'driver', id: driver!.id }, { name: 'own' });
    expect(withNames(flaw, twoWay).values.name).toBe('own');
  });
});
