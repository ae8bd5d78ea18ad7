/** Pixels of a picture that is sent. */
export interface Canvas {
  readonly width: number;
  readonly height: number;
}
