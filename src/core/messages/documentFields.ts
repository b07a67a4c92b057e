/** How a field of the document is called and in which unit people read it: shown value = SI value times `perSi`. */
export interface FieldWords {
  readonly words: string;
  readonly unit: string;
  readonly perSi: number;
}

const plain = (words: string): FieldWords => ({ words, unit: '', perSi: 1 });
const in_ = (words: string, unit: string, perSi = 1): FieldWords => ({ words, unit, perSi });
const mm = (words: string): FieldWords => in_(words, 'mm', 1e3);
const litres = (words: string): FieldWords => in_(words, 'L', 1e3);

/** Words for the fields of the document; a field that is missing here is called by its own name. */
export const documentFields: Readonly<Record<string, FieldWords>> = {
  format: plain('format mark'),
  version: plain('version'),
  name: plain('name'),
  notes: plain('notes'),
  note: plain('note'),
  id: plain('id'),
  kind: plain('kind'),
  opensWith: plain('opening view'),
  temperatureC: in_('air temperature', '°C'),
  pressurePa: in_('air pressure', 'hPa', 0.01),
  humidityFraction: in_('air humidity', '%', 100),
  description: plain('description'),
  role: plain('role'),
  shape: plain('shape'),
  outerDiameterM: mm('outer diameter'),
  displacementM3: litres('displaced volume'),
  reOhm: in_('coil resistance Re', 'Ω'),
  leH: in_('coil inductance Le', 'mH', 1e3),
  kOhmSn: plain('semi-inductance K'),
  exponent: plain('semi-inductance exponent'),
  fsHz: in_('resonance fs', 'Hz'),
  qms: plain('Qms'),
  qes: plain('Qes'),
  qts: plain('Qts'),
  vasM3: litres('Vas'),
  sdM2: in_('cone area Sd', 'cm²', 1e4),
  blTm: in_('force factor Bl', 'T·m'),
  mmsKg: in_('moving mass Mms', 'g', 1e3),
  cmsMPerN: in_('compliance Cms', 'mm/N', 1e3),
  rmsKgPerS: in_('mechanical resistance Rms', 'kg/s'),
  xmaxM: mm('linear excursion Xmax'),
  ratedPowerW: in_('rated power', 'W'),
  sensitivityDb2V83: in_('sensitivity', 'dB'),
  nominalOhm: in_('nominal impedance', 'Ω'),
  densityKgPerM3: in_('air density of the sheet', 'kg/m³'),
  soundSpeedMPerS: in_('speed of sound of the sheet', 'm/s'),
  responseCurveId: plain('measured response'),
  impedanceCurveId: plain('measured impedance'),
  blendHz: in_('blend frequency', 'Hz'),
  widthM: mm('width'),
  heightM: mm('height'),
  depthM: mm('depth'),
  panelM: mm('panel thickness'),
  grossM3: litres('gross volume'),
  bottomM: mm('lower bound'),
  topM: mm('upper bound'),
  bracesM3: litres('volume of braces'),
  fillGain: plain('gain of the filling'),
  q: plain('Q'),
  atHz: in_('frequency', 'Hz'),
  chamberId: plain('chamber'),
  diameterM: mm('diameter'),
  count: plain('number of ports'),
  lengthM: mm('length'),
  innerEnd: plain('inner end'),
  outerEnd: plain('outer end'),
  wallM: mm('wall'),
  face: plain('face'),
  xM: mm('sideways place'),
  yM: mm('height on the front'),
  partId: plain('speaker'),
  acousticCentreZM: mm('acoustic centre'),
  nodes: plain('nodes'),
  ohm: in_('resistance', 'Ω'),
  farad: in_('capacitance', 'µF', 1e6),
  esrOhm: in_('series resistance', 'Ω'),
  henry: in_('inductance', 'mH', 1e3),
  dcrOhm: in_('winding resistance', 'Ω'),
  coreLossTangent: plain('core loss tangent'),
  driverId: plain('driver'),
  driveV: in_('drive', 'V'),
  outputResistanceOhm: in_('output resistance', 'Ω'),
  ratedMinimumLoadOhm: in_('rated minimum load', 'Ω'),
  cableOhm: in_('cable resistance', 'Ω'),
  distanceM: in_('distance', 'm'),
  horizontalDeg: in_('angle to the side', '°'),
  verticalDeg: in_('angle upwards', '°'),
  standHeightM: mm('stand height'),
  radiation: plain('radiation'),
  channel: plain('channel'),
  quantity: plain('quantity'),
  frequenciesHz: in_('frequencies', 'Hz'),
  magnitudes: plain('magnitudes'),
  phasesDeg: in_('phases', '°'),
  baffle: plain('baffle it was taken on'),
  voltageV: in_('voltage', 'V'),
  sourceName: plain('file name'),
  fitting: plain('fitting'),
  cutOutDiameterM: mm('cut-out diameter'),
  recessDepthM: mm('recess depth'),
  screwCircleM: mm('screw circle'),
  screwCount: plain('number of screws'),
  magnetDiameterM: mm('magnet diameter'),
  heat: plain('heating'),
  wire: plain('wire'),
  coilKPerW: in_('thermal resistance of the coil', 'K/W'),
  coilS: in_('time constant of the coil', 's'),
  magnetKPerW: in_('thermal resistance of the magnet', 'K/W'),
  magnetS: in_('time constant of the magnet', 's'),
  limitC: in_('temperature limit', '°C'),
  highPass: plain('active high-pass'),
  order: plain('order'),
  cornerHz: in_('corner', 'Hz'),
  peakVoltageV: in_('greatest peak voltage', 'V'),
  peakCurrentA: in_('greatest peak current', 'A'),
  filling: plain('filling'),
  material: plain('material'),
  flowResistivityPaSPerM2: in_('flow resistivity', 'Pa·s/m²'),
  placing: plain('placing'),
  share: in_('filled share', '%', 100),
  thicknessM: mm('thickness'),
  toChamberId: plain('chamber at the other end'),
  frontChamberId: plain('chamber in front'),
  back: plain('back'),
  innerFlareM: mm('inner rounding'),
  outerFlareM: mm('outer rounding'),
  bends: plain('number of bends'),
  stuffingPaSPerM2: in_('flow resistivity in the bore', 'Pa·s/m²'),
  resonances: plain('resonances of the pipe'),
  addedMassKg: in_('added mass', 'g', 1e3),
  startAreaM2: in_('area at the start', 'cm²', 1e4),
  endAreaM2: in_('area at the end', 'cm²', 1e4),
  end: plain('end'),
  wood: plain('wood of the cabinet'),
  frontM: mm('thickness of the front'),
  backM: mm('thickness of the back'),
  leftM: mm('thickness of the left side'),
  rightM: mm('thickness of the right side'),
  joint: plain('joint'),
  through: plain('panels that run through'),
  rebateM: mm('depth of the rebate'),
  frontLeanDeg: in_('lean of the front', '°'),
  backWidthM: mm('width at the back'),
  braces: plain('list of braces'),
  lies: plain('direction of the brace'),
  atM: mm('place of the brace'),
  openShare: in_('share of the openings', '%', 100),
  board: plain('crossover board'),
  stock: plain('boards to cut from'),
  kerfM: mm('width of the saw cut'),
  trimM: mm('trim'),
  grained: plain('grain'),
  // Groups and lists, where a problem is about the whole of them.
  air: plain('air'),
  enclosure: plain('cabinet'),
  network: plain('circuit'),
  chain: plain('drive and amplifiers'),
  listening: plain('listening place'),
  drivers: plain('list of drivers'),
  chambers: plain('list of chambers'),
  ports: plain('list of ports'),
  mounts: plain('list of places'),
  passiveRadiators: plain('list of passive radiators'),
  lines: plain('list of lines'),
  parts: plain('list of parts'),
  amplifiers: plain('list of amplifiers'),
  curves: plain('list of curves'),
  snapshots: plain('list of kept states'),
  entered: plain('data sheet'),
  sheetAir: plain('air of the data sheet'),
  semiInductance: plain('semi-inductance'),
  measured: plain('measured curves'),
  volume: plain('volume'),
  leak: plain('leak'),
  absorption: plain('absorption'),
  loss: plain('loss'),
  belongsTo: plain('owner'),
  taken: plain('way of measuring'),
};

/** Words for what holds other fields; '' is left out of a sentence. */
const holders: Readonly<Record<string, string>> = {
  air: '',
  enclosure: '',
  network: '',
  chain: '',
  listening: '',
  entered: '',
  volume: '',
  drivers: 'driver',
  chambers: 'chamber',
  ports: 'port',
  mounts: 'mount',
  braces: 'brace',
  wood: '',
  board: 'crossover board',
  stock: 'boards to cut from',
  passiveRadiators: 'passive radiator',
  lines: 'line',
  filling: 'filling',
  placing: '',
  end: '',
  fitting: '',
  heat: '',
  highPass: 'high-pass',
  parts: 'part',
  amplifiers: 'amplifier',
  curves: 'curve',
  snapshots: 'kept state',
  leak: 'leak',
  absorption: 'absorption',
  loss: 'loss',
  semiInductance: '',
  sheetAir: '',
  measured: '',
  taken: '',
  belongsTo: '',
};

export const fieldWords = (field: string): FieldWords => documentFields[field] ?? plain(`"${field}"`);

/**
 * A path of fields in words, innermost first: 'drivers.1.entered.fsHz' is "resonance fs of driver 2".
 * Numbers in the path count from 0, in the sentence from 1.
 */
export function pathInWords(path: string): string {
  const steps = path.split('.').filter((step) => step !== '');
  const words: string[] = [];
  for (let k = steps.length - 1; k >= 0; k--) {
    const step = steps[k]!;
    if (/^\d+$/.test(step)) {
      const holder = steps[k - 1] ?? '';
      const number = Number(step) + 1;
      words.push(holders[holder] ? `${holders[holder]} ${number}` : `entry ${number} of ${fieldWords(holder).words}`);
      k -= 1;
    } else if (k === steps.length - 1) {
      words.push(fieldWords(step).words);
    } else {
      const holder = holders[step] ?? fieldWords(step).words;
      if (holder !== '') words.push(holder);
    }
  }
  return words.join(' of ');
}

/** The last field name of a path, numbers left out. */
export const lastField = (path: string): string => {
  const names = path.split('.').filter((step) => step !== '' && !/^\d+$/.test(step));
  return names[names.length - 1] ?? path;
};
