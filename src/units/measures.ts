import { exactFactors } from './exact-factors';
import type { Unit } from './unit';

/** What a unit measures. */
export type Dimension =
  | 'length'
  | 'area'
  | 'volume'
  | 'angle'
  | 'pixels'
  | 'mass'
  | 'pressure'
  | 'current'
  | 'voltage'
  | 'power'
  | 'air'
  | 'time'
  | 'frequency'
  | 'rate'
  | 'depth'
  | 'data'
  | 'share'
  | 'money'
  | 'warmth'
  | 'count';

/** Every unit that may be typed: spellings and their size, in one unit that all of a dimension share. */
interface Measure {
  /** How a sentence calls it: 'a length'. */
  readonly name: string;
  /** What may be typed, for a sentence that refuses something else. */
  readonly example: string;
  readonly sizes: Readonly<Record<string, number>>;
}

const f = exactFactors;

export const measures: Readonly<Record<Dimension, Measure>> = {
  length: {
    name: 'a length',
    example: '7.3 m, 500 mm or 24\' 6"',
    sizes: {
      mm: 1,
      cm: 10,
      m: 1000,
      millimetres: 1,
      millimeters: 1,
      centimetres: 10,
      centimeters: 10,
      metre: 1000,
      metres: 1000,
      meter: 1000,
      meters: 1000,
      '"': f.mmAnInch,
      in: f.mmAnInch,
      inch: f.mmAnInch,
      inches: f.mmAnInch,
      "'": f.mmAFoot,
      ft: f.mmAFoot,
      foot: f.mmAFoot,
      feet: f.mmAFoot,
    },
  },
  area: {
    name: 'an area',
    example: '12 m² or 130 ft²',
    sizes: {
      'm²': 1,
      m2: 1,
      sqm: 1,
      'sq m': 1,
      'cm²': 1e-4,
      cm2: 1e-4,
      'ft²': f.m2ASquareFoot,
      ft2: f.m2ASquareFoot,
      sqft: f.m2ASquareFoot,
      'sq ft': f.m2ASquareFoot,
    },
  },
  volume: {
    name: 'a volume',
    example: '5000 m³ or 180000 ft³',
    sizes: { 'm³': 1, m3: 1, 'ft³': f.m3ACubicFoot, ft3: f.m3ACubicFoot },
  },
  angle: { name: 'an angle', example: '2.5°', sizes: { '°': 1, deg: 1, degree: 1, degrees: 1 } },
  pixels: {
    name: 'a number of pixels',
    example: '650000 px or 8.8 M px',
    sizes: { px: 1, pixel: 1, pixels: 1, k: 1e3, 'k px': 1e3, kpx: 1e3, M: 1e6, 'M px': 1e6, Mpx: 1e6 },
  },
  mass: {
    name: 'a mass',
    example: '9 kg or 20 lb',
    sizes: { kg: 1, g: 1e-3, t: 1000, lb: f.kgAPound, lbs: f.kgAPound, oz: f.kgAPound / 16 },
  },
  pressure: {
    name: 'a pressure',
    example: '5 kPa or 100 psf',
    sizes: { kPa: 1, Pa: 1e-3, MPa: 1000, 'kN/m²': 1, 'kN/m2': 1, psf: f.kpaAPsf },
  },
  current: { name: 'a current', example: '16 A', sizes: { A: 1, mA: 1e-3, amp: 1, amps: 1 } },
  voltage: { name: 'a voltage', example: '230 V', sizes: { V: 1, kV: 1000, volt: 1, volts: 1 } },
  power: {
    name: 'a power',
    example: '150 W or 1.2 kW',
    sizes: {
      W: 1,
      kW: 1000,
      MW: 1e6,
      watt: 1,
      watts: 1,
      'BTU/h': f.wattsABtuh,
      btuh: f.wattsABtuh,
      ton: f.wattsATon,
      tons: f.wattsATon,
    },
  },
  air: {
    name: 'a flow of air',
    example: '8.3 m³/s or 17600 cfm',
    sizes: {
      'm³/s': 1,
      'm3/s': 1,
      'm³/h': 1 / 3600,
      'm3/h': 1 / 3600,
      cfm: f.m3ACubicFoot / 60,
      'ft³/min': f.m3ACubicFoot / 60,
      'ft3/min': f.m3ACubicFoot / 60,
    },
  },
  time: {
    name: 'a time',
    example: '20 min or 3 days',
    sizes: {
      s: 1,
      ms: 1e-3,
      sec: 1,
      min: 60,
      h: 3600,
      hour: 3600,
      hours: 3600,
      day: 86_400,
      days: 86_400,
      week: 604_800,
      weeks: 604_800,
    },
  },
  frequency: { name: 'a frequency', example: '3840 Hz', sizes: { Hz: 1, kHz: 1000, MHz: 1e6 } },
  rate: { name: 'a frame rate', example: '24 fps', sizes: { fps: 1, Hz: 1 } },
  depth: { name: 'a number of bits', example: '10 bit', sizes: { bit: 1, bits: 1 } },
  data: {
    name: 'a rate of data',
    example: '1 Gbit/s or 850 Mbit/s',
    sizes: {
      'bit/s': 1,
      bps: 1,
      'kbit/s': 1e3,
      kbps: 1e3,
      'Mbit/s': 1e6,
      Mbps: 1e6,
      'Gbit/s': 1e9,
      Gbps: 1e9,
    },
  },
  share: { name: 'a share', example: '10 %', sizes: { '%': 0.01, percent: 0.01 } },
  money: { name: 'an amount of money', example: '1250 or 2.6 M', sizes: { k: 1e3, M: 1e6 } },
  warmth: { name: 'a difference of temperature', example: '10 K', sizes: { K: 1, '°C': 1, '°F': 5 / 9 } },
  count: { name: 'a number', example: '12', sizes: {} },
};

/** What each unit of a figure measures, and its size in the dimension's own unit. */
export const unitMeasures: Readonly<Record<Unit, { readonly dimension: Dimension; readonly size: number }>> = {
  mm: { dimension: 'length', size: 1 },
  m2: { dimension: 'area', size: 1 },
  m3: { dimension: 'volume', size: 1 },
  deg: { dimension: 'angle', size: 1 },
  px: { dimension: 'pixels', size: 1 },
  kg: { dimension: 'mass', size: 1 },
  kPa: { dimension: 'pressure', size: 1 },
  A: { dimension: 'current', size: 1 },
  V: { dimension: 'voltage', size: 1 },
  W: { dimension: 'power', size: 1 },
  tons: { dimension: 'power', size: f.wattsATon },
  btuh: { dimension: 'power', size: f.wattsABtuh },
  'm3/s': { dimension: 'air', size: 1 },
  min: { dimension: 'time', size: 60 },
  s: { dimension: 'time', size: 1 },
  Hz: { dimension: 'frequency', size: 1 },
  fps: { dimension: 'rate', size: 1 },
  bit: { dimension: 'depth', size: 1 },
  bps: { dimension: 'data', size: 1 },
  share: { dimension: 'share', size: 1 },
  money: { dimension: 'money', size: 1 },
  days: { dimension: 'time', size: 86_400 },
  K: { dimension: 'warmth', size: 1 },
  count: { dimension: 'count', size: 1 },
};
