import { describe, expect, it } from 'vitest';
import { writeProject } from '../../../../src/core/document/file/writeProject.ts';
import type { Project } from '../../../../src/core/document/schema.ts';
import { twoWay } from '../twoWay.ts';

/** The same document with the keys of every object the other way round. */
function reversed<T>(thing: T): T {
  if (Array.isArray(thing)) return thing.map(reversed) as T;
  if (typeof thing !== 'object' || thing === null) return thing;
  const entries = Object.entries(thing).map(([key, value]) => [key, reversed(value)]);
  return Object.fromEntries(entries.reverse()) as T;
}

describe('writeProject', () => {
  it('writes the same text whatever way the document came about', () => {
    expect(writeProject(reversed(twoWay))).toBe(writeProject(twoWay));
  });

  it('begins with format and version and ends with one newline', () => {
    const text = writeProject(twoWay);
    expect(text).toMatch(/^\{\n "format": "conewright-project",\n "version": 2,\n "name": "Two-way",/);
    expect(text).toMatch(/[^\n]\n$/);
  });

  it('throws on a document that could not be read again', () => {
    expect(() => writeProject({ ...twoWay, name: '' } as Project)).toThrow();
  });
});
