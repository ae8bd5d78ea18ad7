import { BoxGeometry } from 'three';

/** A box of 1 x 1 x 1 whose +z side, the face, lies at z = 0 with its middle at the origin. Every card is one of it, sized by its matrix. */
export const unitCard = new BoxGeometry(1, 1, 1).translate(0, 0, -0.5);
