/** Throws with the path of the first number, in records, lists or typed arrays, that is NaN or infinite. */
export function expectFinite(value: unknown, path: string): void {
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new Error(`${path} is ${value}`);
  } else if (ArrayBuffer.isView(value)) {
    const odd = (value as unknown as Float64Array).findIndex((one) => !Number.isFinite(one));
    if (odd >= 0) throw new Error(`${path}[${odd}] is not finite`);
  } else if (typeof value === 'object' && value !== null) {
    for (const [key, inner] of Object.entries(value)) expectFinite(inner, `${path}.${key}`);
  }
}
