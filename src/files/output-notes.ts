import type { RenderNode } from '../calc/nodes/node-result';

/** What lies beside the files of a set: what each of them is, and every node with its canvas and its crops. */
export function outputNotes(nodes: readonly RenderNode[], title: string): string {
  return [
    title,
    '',
    'pixel-map.csv     every panel: top left pixel on the canvas of its node (y down from the top row, as seen',
    '                  from inside; of a ceiling, from below), size, turn in degrees, and its way there',
    'stage.glb         glTF 2.0: a mesh a surface, in it a primitive and a material a node. TEXCOORD_0 is the',
    '                  canvas of the surface, TEXCOORD_1 that of the node; metres, y up',
    'stage.obj, .mtl   the same as OBJ; texture coordinates are the canvas of the surface, a material a node',
    'pictures          test picture of every node at the exact size of its canvas, 8 bits',
    'pictures-16-bit   the same for nodes that send more than 8 bits: the ramps have 1024 levels, in the upper',
    '                  10 of 16 bits',
    '',
    'On a panel: its name, its port and its place on the run; a border of one pixel all round. The line with',
    'arrows is the run: it begins at the diamond, where the port stands on a plate, and ends at the square.',
    'A run that returns ends in violet, with the port that it goes back to on a plate.',
    'A line inside the border is the edge of a zone. Slanted lines run on from panel to panel and from node to',
    'node of a surface. Along the foot of each panel: grey, red, green and blue, from black at the left edge of',
    'the canvas to full at its right. Black is a pixel that no panel shows.',
    '',
    ...nodes.flatMap(nodeLines),
    '',
  ].join('\r\n');
}

function nodeLines(node: RenderNode): string[] {
  const { name, letter, canvasWidth, canvasHeight, offsetX, offsetY, crops } = node;
  return [
    `${name}  surface ${letter}, canvas ${canvasWidth} x ${canvasHeight}, begins at ${offsetX}, ${offsetY} of the surface`,
    ...crops.map(
      ({ processor, x, y, width, height }) => `    processor ${processor}: ${width} x ${height} from ${x}, ${y}`,
    ),
  ];
}
