/** Levels of a ramp: all that 10 bits tell apart. */
export const rampLevels = 1024;

export type RampChannel = 'grey' | 'red' | 'green' | 'blue';

/** Colours of runs that lie beside each other: dark, so that a wall full of them draws little, each with its hatching. */
const grounds = [0x1e2c40, 0x3d2a1a, 0x16383a, 0x3a1f33, 0x2a3a1c, 0x3d1d22, 0x25254c, 0x36351a] as const;
const hatchLift = 0x2a;

/** Inks of a test picture by name; 0 is black, as blank pixels are. */
export const pictureInks = {
  blank: 0,
  border: 1,
  name: 2,
  port: 3,
  entry: 4,
  zoneEdge: 5,
  /** Ground and hatching of a panel that hangs on no port. */
  idleGround: 6,
  idleHatch: 7,
  /** Where a run goes back to. */
  returns: 8,
} as const;

const named = [0x000000, 0xffffff, 0xf4f1e6, 0xffc44d, 0xff6b3d, 0x53d6e4, 0x2b2b2b, 0x555555, 0xcf9dff] as const;
const firstGround = named.length;
const firstRamp = firstGround + grounds.length * 2;
const channels: readonly RampChannel[] = ['grey', 'red', 'green', 'blue'];

/** Ground of a run and the hatching on it, by the run's number; neighbours differ. */
export function groundOfRun(run: number): { readonly ground: number; readonly hatch: number } {
  const ground = firstGround + (run % grounds.length) * 2;
  return { ground, hatch: ground + 1 };
}

/** Ink of a ramp's level, 0 (black) to 1023 (full). */
export function rampInk(channel: RampChannel, level: number): number {
  return firstRamp + channels.indexOf(channel) * rampLevels + level;
}

/**
 * The colours of all inks, 16 bits a channel. A level of 10 bits is widened by repeating its upper bits, so that the upper 10
 * and the upper 8 give it back. Source: ISO/IEC 15948:2004 (PNG), 12.5 sample depth scaling.
 */
export function picturePalette(): Uint16Array {
  const palette = new Uint16Array((firstRamp + channels.length * rampLevels) * 3);
  const set = (ink: number, rgb: number) => {
    palette.set([(rgb >> 16) * 257, ((rgb >> 8) & 0xff) * 257, (rgb & 0xff) * 257], ink * 3);
  };
  named.forEach((rgb, ink) => {
    set(ink, rgb);
  });
  grounds.forEach((rgb, run) => {
    const { ground, hatch } = groundOfRun(run);
    set(ground, rgb);
    set(hatch, rgb + hatchLift * 0x010101);
  });
  for (const channel of channels) {
    for (let level = 0; level < rampLevels; level++) {
      const value = (level << 6) | (level >> 4);
      const on = (name: RampChannel) => (channel === 'grey' || channel === name ? value : 0);
      palette.set([on('red'), on('green'), on('blue')], rampInk(channel, level) * 3);
    }
  }
  return palette;
}
