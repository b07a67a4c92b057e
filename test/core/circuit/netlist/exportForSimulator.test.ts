import { describe, expect, it } from 'vitest';
import { exportForSimulator, type Part, parseNetlist } from '../../../../src/core/circuit/index.ts';
import { succeeded } from '../solved.ts';

// What the text means is compared with ngspice in ngspice.test.ts.

const options = {
  title: 'a title\nwith a break',
  amplifiers: [{ id: 'V1', voltageV: 2.83, resistanceOhm: 0.08 }],
  drivers: new Map(),
  lowHz: 20,
  highHz: 20000,
};

describe('exportForSimulator', () => {
  it('writes plain elements with fresh inner nodes and names', () => {
    const parts = succeeded(
      parseNetlist('V1 in 0\nL1 in a.b 1m dcr=0.3\nC1 a.b 0 10u\nR_L1 L1_1 0 0\nR2 a.b L1_1 3\nJ1 in J1'),
    );
    expect(exportForSimulator(parts, options).text).toBe(
      [
        '* a title with a break',
        'R_V1 in R_V1_1 0.08',
        'V1 R_V1_1 0 DC 0 AC 2.83',
        'L1 in L1_1_2 0.001',
        'R_L1_2 L1_1_2 a_b 0.3',
        'C1 a_b 0 0.00001',
        'R_L1 L1_1 0 0.001',
        'R2 a_b L1_1 3',
        'R_J1 in J1 0.001',
        '.ac dec 48 20 20000',
        '.end',
        '',
      ].join('\n'),
    );
  });

  it('says what plain elements cannot carry', () => {
    const parts: Part[] = succeeded(
      parseNetlist('V1 in 0\nL1 in a 3m dcr=0.3 tand=0.01\nLS1 a 0 unknown\nLS2 a 0 odd'),
    );
    const odd = { reOhm: 6, leH: 0, semiInductance: { kOhmSn: 0.001, exponent: 1.1 }, motional: null };
    const { text, remarks } = exportForSimulator(parts, { ...options, drivers: new Map([['odd', odd]]) });
    expect(remarks.map((r) => [r.code, r.place.id])).toEqual([
      ['circuit.export-core-loss', 'L1'],
      ['circuit.export-driver', 'LS1'],
      ['circuit.export-semi-inductance', 'LS2'],
    ]);
    expect(text.split('\n').filter((line) => line.startsWith('*')).length).toBe(4);
    expect(text).toContain('R_LS2_coil a 0 6\n');
  });

  it('throws for an amplifier whose settings were not given', () => {
    const parts = succeeded(parseNetlist('V2 in 0'));
    expect(() => exportForSimulator(parts, options)).toThrow(/no settings of amplifier V2/);
  });
});
