import type { RenderNode } from '../../../calc/nodes/node-result';

const widthPx = 240;

/** A node's canvas with the crop of each processor in it, to scale; what no crop takes is hatched. */
export function CanvasDiagram({ node }: { readonly node: RenderNode }) {
  const { name, letter, canvasWidth, canvasHeight, crops } = node;
  const scale = Math.min(widthPx / canvasWidth, widthPx / canvasHeight);
  const words = crops
    .map(({ processor, x, y, width, height }) => `P${processor} ${width} by ${height} from ${x}, ${y}`)
    .join('; ');
  return (
    <figure className="canvas-diagram">
      <svg
        width={canvasWidth * scale + 2}
        height={canvasHeight * scale + 2}
        viewBox={`-1 -1 ${canvasWidth * scale + 2} ${canvasHeight * scale + 2}`}
        role="img"
        aria-label={`Canvas of ${name}: ${words}`}
      >
        <rect className="blank" width={canvasWidth * scale} height={canvasHeight * scale} />
        {crops.map(({ processor, x, y, width, height }) => (
          <g key={processor}>
            <rect className="crop" x={x * scale} y={y * scale} width={width * scale} height={height * scale} />
            {width * scale > 24 && height * scale > 14 && (
              <text x={(x + width / 2) * scale} y={(y + height / 2) * scale}>
                P{processor}
              </text>
            )}
          </g>
        ))}
      </svg>
      <figcaption>
        {name}, surface {letter}: {canvasWidth} × {canvasHeight}
      </figcaption>
    </figure>
  );
}
