/** A binary glTF file taken apart by the letter of the specification (glTF 2.0, 4.4 and 3.6.2), with none of our code. */
export interface ReadGlb {
  readonly json: {
    readonly scenes: readonly { readonly name: string; readonly nodes: readonly number[] }[];
    readonly nodes: readonly {
      readonly name: string;
      readonly mesh: number;
      readonly children?: readonly number[];
      readonly translation?: readonly number[];
      readonly rotation?: readonly number[];
    }[];
    readonly meshes: readonly {
      readonly name: string;
      readonly extras: object;
      readonly primitives: readonly {
        readonly attributes: Readonly<Record<'POSITION' | 'NORMAL' | 'TEXCOORD_0' | 'TEXCOORD_1', number>>;
        readonly indices: number;
        readonly material: number;
        readonly mode?: number;
      }[];
    }[];
    readonly materials: readonly { readonly name: string; readonly extras?: object }[];
    readonly accessors: readonly {
      readonly bufferView: number;
      readonly count: number;
      readonly type: string;
      readonly componentType: number;
    }[];
    readonly bufferViews: readonly { readonly byteOffset: number; readonly byteLength: number }[];
  };
  /** Numbers of an accessor, all components one after the other. */
  readonly numbers: (accessor: number) => number[];
}

export function readGlb(bytes: Uint8Array): ReadGlb {
  const file = Buffer.from(bytes);
  const textBytes = file.readUInt32LE(12);
  const json: ReadGlb['json'] = JSON.parse(file.toString('utf8', 20, 20 + textBytes));
  const binary = file.subarray(20 + textBytes + 8);
  const components: Readonly<Record<string, number>> = { SCALAR: 1, VEC2: 2, VEC3: 3 };
  return {
    json,
    numbers(index) {
      const { bufferView, count, type, componentType } = json.accessors[index]!;
      const { byteOffset } = json.bufferViews[bufferView]!;
      return Array.from({ length: count * components[type]! }, (_, i) =>
        componentType === 5126 ? binary.readFloatLE(byteOffset + i * 4) : binary.readUInt32LE(byteOffset + i * 4),
      );
    },
  };
}
