import type { Raster } from '../raster';
import { drawText, textSize, unitForWidth } from './draw-text';
import { fillRectangle } from './fill-rectangle';
import { panelLayout } from './panel-layout';
import { groundOfRun, pictureInks } from './picture-inks';
import type { PictureSpot } from './test-picture-inputs';

/** What a panel says. */
export interface PanelWords {
  /** 'A C38 R9'. */
  readonly name: string;
  /** '3B-04'; null where it hangs on no port. */
  readonly port: string | null;
  /** Place on its run, from 1. */
  readonly place: number;
}

/** Lettering of the port beside that of the name. */
const portShare = 0.66;

/** The panel's name on two lines, below it its port and its place on the run, as large as fits. */
export function paintWords(raster: Raster, spot: PictureSpot, { name, port, place }: PanelWords, run: number): void {
  const { words } = panelLayout(spot.width, spot.height);
  const cut = name.lastIndexOf(' ');
  const lines = [name.slice(0, Math.max(0, cut)), name.slice(cut + 1)];
  const way = port === null ? 'NO PORT' : `${port} ${place}`;
  const unit = Math.min(
    ...lines.filter((line) => line !== '').map((line) => unitForWidth(line, words.width)),
    Math.floor(words.height / (2 * 7.5 + 7.5 * portShare)),
  );
  if (unit < 1) return;
  const small = Math.max(1, Math.min(Math.round(unit * portShare), unitForWidth(way, words.width)));
  const { ground } = run < 0 ? { ground: pictureInks.idleGround } : groundOfRun(run);
  let y = spot.y + words.y;
  const write = (text: string, size: number, ink: number, plate: number) => {
    const { width, height } = textSize(text, size);
    fillRectangle(raster, spot.x + words.x - size, y - size, width + 2 * size, height + 2 * size, plate);
    drawText(raster, text, spot.x + words.x, y, size, ink);
    y += height + Math.ceil(size * 1.6);
  };
  for (const line of lines) if (line !== '') write(line, unit, pictureInks.name, ground);
  y += unit;
  const isEntry = port !== null && place === 1;
  write(way, small, isEntry ? pictureInks.blank : pictureInks.port, isEntry ? pictureInks.entry : ground);
}
