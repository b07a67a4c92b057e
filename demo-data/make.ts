import {
  asBuilt,
  demo,
  driverAlone,
  heardFrom,
  measuredImpedance,
  measuredResponse,
  simulated,
  writeColumns,
} from './measure.ts';

// Makes every invented measurement file anew. Each stands for a loudspeaker that deviates from its project as stated here
// and in the folder's README. Run with: npm run demo-data

const plain = (header: string[]) => ({ separator: '\t', header, withPhase: true });
const INVENTED = '* invented data, made from the project by a seeded script';

/** The two channels as built: small tolerances, and one wrong resistor on the right. */
function readingRoom(): void {
  const project = demo('reading-room');
  const left = asBuilt(project, { C1: 1.03, C3: 0.97, L3: 1.02, C5: 1.02 });
  const right = asBuilt(project, { C1: 0.98, C3: 1.02, L3: 0.99, C5: 0.99, R4: 1.74 });
  const microphone = (p: typeof project) => heardFrom(p, 'LS3', 0.4);
  [left, right].forEach((channel, index) => {
    const name = index === 0 ? 'left' : 'right';
    writeColumns(
      `reading-room/${name}-response-0.4m.txt`,
      measuredResponse(simulated(microphone(channel), 200, 20000, 240), 21 + index, 0.5, 0.08),
      plain([INVENTED, `* ${name} channel, on axis 0.4 m from the tweeter, 2.83 V`, 'Hz\tdB\tdeg']),
    );
    writeColumns(
      `reading-room/${name}-impedance.csv`,
      measuredImpedance(simulated(channel, 10, 20000, 300), 31 + index, 0.004),
      {
        separator: ';',
        decimalComma: true,
        header: [
          `# invented data; ${name} channel, both bi-wire links on`,
          'Frequency [Hz];Impedance [ohm];Phase [deg]',
        ],
        withPhase: true,
      },
    );
  });
  const drivers = [
    ['LS3', 'tweeter', 500],
    ['LS2', 'mid', 200],
  ] as const;
  drivers.forEach(([partId, name, fromHz], index) => {
    const alone = heardFrom(driverAlone(project, partId), partId, 1);
    writeColumns(
      `reading-room/${name}-on-baffle-1m.txt`,
      measuredResponse(simulated(alone, fromHz, 20000, 200), 41 + index, 1.1, 0.1),
      plain([
        INVENTED,
        `* ${name} alone on the finished cabinet, 1 m on axis, 2.83 V, no crossover`,
        'Hz\tdB SPL\tdeg',
      ]),
    );
    writeColumns(
      `reading-room/${name}-impedance.txt`,
      measuredImpedance(simulated(alone, 20, 20000, 240), 51 + index, 0.004),
      {
        separator: '  ',
        header: [`# invented data; ${name} alone in its chamber`, '# Hz ohm deg'],
        withPhase: true,
      },
    );
  });
}

/** The right box has its tweeter connected the wrong way round: impedance agrees, response does not. */
function kitchenShelf(): void {
  const project = demo('kitchen-shelf');
  const right = {
    ...project,
    network: {
      parts: project.network.parts.map((part) =>
        part.id === 'LS2' ? { ...part, nodes: [part.nodes[1], part.nodes[0]] as const } : part,
      ),
    },
  };
  [project, right].forEach((channel, index) => {
    const name = index === 0 ? 'left' : 'right';
    writeColumns(
      `kitchen-shelf/${name}-response.txt`,
      measuredResponse(simulated(heardFrom(channel, 'LS2', 0.4), 200, 20000, 240), 61 + index, 0.5, 0.08),
      {
        ...plain([INVENTED, `* ${name} box, on axis 0.4 m from the tweeter, 2.83 V, magnitude only`, 'Hz dB']),
        withPhase: false,
      },
    );
    writeColumns(
      `kitchen-shelf/${name}-impedance.txt`,
      measuredImpedance(simulated(channel, 10, 20000, 240), 71 + index, 0.004),
      plain([INVENTED, 'Hz\tohm\tdeg']),
    );
  });
}

/** The teaching box with its tube as drawn and cut 30 mm and 60 mm shorter. */
function portLesson(): void {
  const project = demo('port-lesson');
  [0, 0.03, 0.06].forEach((cutM, index) => {
    const { enclosure } = project;
    const ports = enclosure.ports.map((port) => ({ ...port, lengthM: port.lengthM - cutM }));
    const millimetres = Math.round(ports[0]!.lengthM * 1000);
    writeColumns(
      `port-lesson/impedance-tube-${millimetres}mm.txt`,
      measuredImpedance(
        simulated({ ...project, enclosure: { ...enclosure, ports } }, 10, 1000, 200),
        81 + index,
        0.004,
      ),
      plain([INVENTED, `* tube ${millimetres} mm long`, 'Hz\tohm\tdeg']),
    );
  });
}

readingRoom();
kitchenShelf();
portLesson();
