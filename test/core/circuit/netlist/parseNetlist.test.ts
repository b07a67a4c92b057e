import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatNetlist, type Part, parseNetlist } from '../../../../src/core/circuit/index.ts';
import { wordedCodes } from '../../../../src/core/messages/index.ts';
import { succeeded } from '../solved.ts';

describe('parseNetlist', () => {
  it('reads every kind of part, comments, continuation lines and .end', () => {
    const text = `* a two-way
v1 Amp gnd
L1 amp w 2.2mH
+ dcr = 0.3 ; air coil
* between
+ tand=0.002
C1 W 0 33uF esr=50m
r1 w z 6.8 rated=10W ; keep away from the panel
J1 amp amp2
LS1 w GND woofer
ls2 0 amp2 "dome tweeter; 28 mm"
.END

* nothing behind the end but remarks
`;
    expect(succeeded(parseNetlist(text))).toEqual([
      { kind: 'amplifier', id: 'v1', nodes: ['Amp', '0'], note: '' },
      {
        kind: 'inductor',
        id: 'L1',
        nodes: ['Amp', 'w'],
        note: 'air coil',
        henry: 2.2e-3,
        dcrOhm: 0.3,
        coreLossTangent: 0.002,
      },
      { kind: 'capacitor', id: 'C1', nodes: ['w', '0'], note: '', farad: 33e-6, esrOhm: 0.05 },
      {
        kind: 'resistor',
        id: 'r1',
        nodes: ['w', 'z'],
        note: 'keep away from the panel',
        ohm: 6.8,
        ratedPowerW: 10,
      },
      { kind: 'jumper', id: 'J1', nodes: ['Amp', 'amp2'], note: '' },
      { kind: 'speaker', id: 'LS1', nodes: ['w', '0'], note: '', driverId: 'woofer' },
      { kind: 'speaker', id: 'ls2', nodes: ['0', 'Amp2'.toLowerCase()], note: '', driverId: 'dome tweeter; 28 mm' },
    ]);
  });

  it('lists every problem with its line', () => {
    const text = [
      '+ dcr=1', // 1
      'Q1 a b c', // 2
      'R1 a b', // 3
      'R2 a b 4k7', // 4
      'R3 a b -1', // 5
      'C1 a b 0', // 6
      'C2 a b 1u dcr=1', // 7
      'C3 a b 1u esr=-1', // 8
      'C4 a b 1u esr=1 esr=2', // 9
      'L1 a b! 1m', // 10
      'LS1 a 0 1m', // 11
      'LS2 a 0', // 12
      'V1 a 0 AC 1', // 13
      '.ac dec 10 1 100', // 14
      'R4 a 0 1', // 15
      'r4 a 0 2', // 16
      'R5', // 17
      'J1 a', // 18
      'R6 a 0 5 $ remark', // 19
      'R7 a 0 10uF', // 20
      '.end',
      'R8 a 0 1', // 22
    ].join('\r\n');
    const result = parseNetlist(text);
    expect(result.ok ? [] : result.problems.map((p) => [p.place.line, p.code.replace('circuit.netlist-', '')])).toEqual(
      [
        [1, 'continuation'],
        [2, 'unknown-line'],
        [3, 'too-short'],
        [4, 'value'],
        [5, 'range'],
        [6, 'range'],
        [7, 'option'],
        [8, 'option'],
        [9, 'option'],
        [10, 'node'],
        [11, 'speaker-value'],
        [12, 'too-short'],
        [13, 'extra'],
        [14, 'directive'],
        [16, 'duplicate'],
        [17, 'too-short'],
        [18, 'too-short'],
        [19, 'option'],
        [19, 'option'],
        [20, 'value'],
        [22, 'after-end'],
      ],
    );
  });

  it('says that an empty text is empty, and never fails on noise (seed 9)', () => {
    const empty = parseNetlist('* only a comment\n');
    expect(empty.ok ? [] : empty.problems.map((p) => p.code)).toEqual(['circuit.netlist-empty']);
    const noise = fc.array(
      fc.oneof(
        fc.string({ unit: 'grapheme' }),
        fc.constantFrom(
          'R1 a b 1',
          '+ esr=1',
          '"',
          ';',
          '=',
          '* x',
          '.end',
          'L1 __proto__ constructor 1m',
          'C a b toString',
        ),
      ),
    );
    fc.assert(
      fc.property(noise, (lines) => {
        const result = parseNetlist(lines.join('\n'));
        if (result.ok) expect(result.value.length).toBeGreaterThan(0);
        else for (const { code } of result.problems) expect(wordedCodes()).toContain(code);
      }),
      { seed: 9, numRuns: 1000 },
    );
  });

  it('refuses names of object members as options', () => {
    const result = parseNetlist('R1 a b 1 constructor=1\nR2 a b 1 __proto__=1');
    expect(result.ok ? [] : result.problems.map((p) => p.code)).toEqual(Array(2).fill('circuit.netlist-option'));
  });
});

const positive = fc.double({ min: 1e-12, max: 1e6, noNaN: true });
const notNegative = fc.oneof(fc.constant(0), positive);
const node = fc.constantFrom('0', 'amp', 'w1', 'W-2', 'a.b', 'c+d', 'x_9');
const note = fc.constantFrom('', 'a note', 'two; points "quoted" = here', '* not a line of its own');
const partOf = (id: number): fc.Arbitrary<Part> => {
  const base = { nodes: fc.tuple(node, node), note };
  return fc.oneof(
    fc.record({
      ...base,
      kind: fc.constant('resistor' as const),
      id: fc.constant(`R${id}`),
      ohm: notNegative,
      ratedPowerW: fc.oneof(fc.constant(null), positive),
    }),
    fc.record({
      ...base,
      kind: fc.constant('capacitor' as const),
      id: fc.constant(`C${id}`),
      farad: positive,
      esrOhm: notNegative,
    }),
    fc.record({
      ...base,
      kind: fc.constant('inductor' as const),
      id: fc.constant(`L${id}`),
      henry: positive,
      dcrOhm: notNegative,
      coreLossTangent: notNegative,
    }),
    fc.record({ ...base, kind: fc.constant('jumper' as const), id: fc.constant(`J${id}`) }),
    fc.record({
      ...base,
      kind: fc.constant('speaker' as const),
      id: fc.constant(`LS${id}`),
      driverId: fc.constantFrom('woofer', 'dome tweeter', '8', '10uH', 'a;b', 'mid=1', '*', '+', 'tiefmitteltöner'),
    }),
    fc.record({ ...base, kind: fc.constant('amplifier' as const), id: fc.constant(`V${id}`) }),
  );
};
const network = fc
  .integer({ min: 1, max: 30 })
  .chain((count) => fc.tuple(...Array.from({ length: count }, (_, i) => partOf(i + 1))));

describe('formatNetlist', () => {
  it('is read back to the same parts (seed 2)', () => {
    fc.assert(
      fc.property(network, (parts) => {
        expect(succeeded(parseNetlist(formatNetlist(parts)))).toEqual(parts);
      }),
      { seed: 2, numRuns: 300 },
    );
  });

  it('keeps apart what differs in case alone, and gives ids the letter of their kind', () => {
    const base = { note: '', ratedPowerW: null, kind: 'resistor' } as const;
    const text = formatNetlist([
      { ...base, id: 'R1', nodes: ['a', 'A'], ohm: 1 },
      { ...base, id: 'r1', nodes: ['A', 'gnd'], ohm: 2 },
      { ...base, id: 'damping 1', nodes: ['a', '0'], ohm: 3 },
      {
        kind: 'inductor',
        note: 'line\nbreak',
        id: 'LSx',
        nodes: ['a', '0'],
        henry: 1e-3,
        dcrOhm: 0,
        coreLossTangent: 0,
      },
    ]);
    expect(text).toBe('R1 a A_2 1\nr1_2 A_2 gnd_2 2\nR_damping_1 a 0 3\nL_LSx a 0 1m ; line break\n');
  });
});
