/** The same plain data, frozen to its leaves: whoever writes to it throws. */
export function deepFreeze<T>(thing: T): T {
  if (typeof thing === 'object' && thing !== null && !Object.isFrozen(thing)) {
    Object.freeze(thing);
    for (const inner of Object.values(thing)) deepFreeze(inner);
  } else if (typeof thing === 'object' && thing !== null) {
    for (const inner of Object.values(thing)) deepFreeze(inner);
  }
  return thing;
}
