import type { Cable } from '../cable';
import type { Distro } from '../distro';

/** Invented distros. From memory, common practice, no source. */
export const starterDistros: readonly Distro[] = [
  {
    id: 'quay-63',
    name: 'Quay 63 A, twelve circuits (invented)',
    circuits: 12,
    legA: 63,
    massKg: 38,
    purchase: { price: 2100, leadDays: 21 },
  },
  {
    id: 'quay-125',
    name: 'Quay 125 A, twenty-four circuits (invented)',
    circuits: 24,
    legA: 125,
    massKg: 84,
    purchase: { price: 4300, leadDays: 28 },
  },
  {
    id: 'wharf-400',
    name: 'Wharf 400 A, thirty-six circuits (invented)',
    circuits: 36,
    legA: 400,
    massKg: 190,
    purchase: { price: 12_400, leadDays: 42 },
  },
];

/** Invented cables, one of each kind that materials count. From memory, common practice, no source. */
export const starterCables: readonly Cable[] = [
  { id: 'home-run-20', name: 'Data, home run (invented)', kind: 'home-run', massKg: 1.9, price: 64 },
  { id: 'jumper-data', name: 'Data, panel to panel (invented)', kind: 'data-jumper', massKg: 0.1, price: 14 },
  { id: 'jumper-power', name: 'Power, panel to panel (invented)', kind: 'power-jumper', massKg: 0.22, price: 21 },
  { id: 'circuit-25', name: 'Power, circuit to first panel (invented)', kind: 'circuit', massKg: 7.5, price: 118 },
  { id: 'trunk-50', name: 'Fibre, processor to breakout (invented)', kind: 'trunk', massKg: 3.2, price: 260 },
  { id: 'video-10', name: 'Video, node to processor (invented)', kind: 'video', massKg: 0.9, price: 145 },
];
