import { useMemo } from 'react';
import { pathData } from '../../files/path-data';
import { type QrPath, quietModules } from '../../sheets/qr-path';

/** Wide enough for a camera, and whole, so that no module is wider than its neighbour. */
const pxAModule = 3;

/** A code to scan: dark on light in every theme, with the quiet zone that scanners need. */
export function QrCode({ path, label }: { readonly path: QrPath; readonly label: string }) {
  const data = useMemo(() => pathData(path.lines), [path]);
  const size = path.modules + 2 * quietModules;
  return (
    <svg
      className="qr"
      width={size * pxAModule}
      viewBox={`${-quietModules} ${-quietModules} ${size} ${size}`}
      role="img"
      aria-label={label}
    >
      <rect x={-quietModules} y={-quietModules} width={size} height={size} fill="#ffffff" />
      <path d={data} fill="#000000" />
    </svg>
  );
}
