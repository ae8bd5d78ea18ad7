/** What the tests use of the validator, which brings no types of its own. */
declare module 'gltf-validator' {
  interface Issue {
    readonly code: string;
    readonly message: string;
    /** 0 error, 1 warning, 2 information, 3 hint. */
    readonly severity: number;
    readonly pointer?: string;
  }
  interface Report {
    readonly issues: { readonly numErrors: number; readonly numWarnings: number; readonly messages: readonly Issue[] };
    readonly info: {
      readonly totalVertexCount: number;
      readonly totalTriangleCount: number;
      readonly materialCount: number;
    };
  }
  export function validateBytes(bytes: Uint8Array): Promise<Report>;
}
