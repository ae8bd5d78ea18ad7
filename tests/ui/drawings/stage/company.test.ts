import { Matrix4, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { findOpening } from '../../../../src/sheets/find-opening';
import { outlookOf } from '../../../../src/ui/drawings/stage/outlook';
import { personOutline } from '../../../../src/ui/drawings/stage/person-outline';
import { stageExtent } from '../../../../src/ui/drawings/stage/stage-extent';
import { standingPersons } from '../../../../src/ui/drawings/stage/standing-persons';
import { vehicleCards } from '../../../../src/ui/drawings/stage/vehicle-cards';
import { stageFixture } from '../../../arbitraries/evaluation-fixture';

const ring = stageFixture({ columns: 136, rows: 13, jointDeg: 2.5 });
const opening = findOpening(ring.walls)!;
const corners = (cards: Float32Array, at: number) =>
  [-0.5, 0.5].flatMap((x) =>
    [-0.5, 0.5].flatMap((y) =>
      [-1, 0].map((z) => new Vector3(x, y, z).applyMatrix4(new Matrix4().fromArray(cards, at))),
    ),
  );

describe('personOutline', () => {
  it('is 1.75 m high, stands on the floor and is the same on both sides', () => {
    const heights = personOutline.map(([, y]) => y);
    expect(Math.max(...heights)).toBeCloseTo(1.75, 2);
    expect(Math.min(...heights)).toBe(0);
    expect(personOutline.reduce((sum, [x]) => sum + x, 0)).toBeCloseTo(0, 9);
  });
});

describe('vehicleCards', () => {
  const cards = vehicleCards({ widthMm: 2500, heightMm: 3800 }, opening, outlookOf(ring), stageExtent(ring));
  it('is as wide and as high as stated', () => {
    const body = corners(cards, 16);
    const xs = body.map((corner) => corner.x);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(2.5, 5);
    expect(Math.max(...body.map((corner) => corner.y))).toBeCloseTo(3.8, 5);
  });
  it('stands outside, before the opening, its cab towards it', () => {
    const cab = corners(cards, 0).map((corner) => corner.z);
    // The opening's middle is at plan y -11.28 m: scene z +11.28.
    expect(Math.min(...cab)).toBeGreaterThan(11.3);
    expect(Math.min(...corners(cards, 16).map((corner) => corner.z))).toBeGreaterThan(Math.max(...cab));
  });
  it('is not inside out', () => {
    expect(new Matrix4().fromArray(cards, 0).determinant()).toBeGreaterThan(0);
  });
  it('stands clear of a stage without an opening', () => {
    const flat = stageFixture({ columns: 16, rows: 8, jointDeg: 0 });
    const aside = vehicleCards({ widthMm: null, heightMm: null }, null, outlookOf(flat), stageExtent(flat));
    // The wall reaches from -4 m to 4 m.
    expect(Math.max(...corners(aside, 16).map((corner) => corner.x))).toBeLessThan(-4);
  });
});

describe('standingPersons', () => {
  it('stand inside the ring and in its opening', () => {
    const [inside, between] = standingPersons(opening, outlookOf(ring), stageExtent(ring));
    expect(Math.hypot(...inside!)).toBeLessThan(10.5);
    expect(Math.abs(between![0])).toBeLessThan(1.99);
    expect(between![1]).toBeGreaterThan(11.2);
  });
  it('stand before a flat wall', () => {
    const flat = stageFixture({ columns: 16, rows: 8, jointDeg: 0 });
    const persons = standingPersons(null, outlookOf(flat), stageExtent(flat));
    expect(persons).toHaveLength(1);
    expect(persons[0]![1]).toBeGreaterThan(0.5);
  });
});
