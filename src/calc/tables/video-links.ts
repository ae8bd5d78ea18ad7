import table from '../../../shared/video-links.json';

/** A raster that SDI sends in RGB 4:4:4, and the fastest rate it does so at, x1000/1001 rates by their whole rate. */
export interface SdiRaster {
  readonly width: number;
  readonly height: number;
  readonly fastestFps: number;
}

/** One way to send a picture, RGB 4:4:4 without compression. */
export interface VideoLink {
  readonly id: string;
  readonly name: string;
  readonly kind: 'tmds' | 'frl' | 'displayport' | 'sdi' | 'ethernet';
  /** Cables side by side that carry one picture. */
  readonly cables: number;
  /** What it carries of pixels and blanking, after its coding and error correction; of ST 2110-20 what is on the wire, gaps and all. */
  readonly payloadBps: number;
  /** Bits on its lanes, and the share of them that it carries as [part, whole]. */
  readonly rawBps: number;
  readonly carries: readonly [number, number];
  /** Fastest TMDS character rate in Hz: pixel clock x bits / 8; null where no clock limits. */
  readonly characterHz: number | null;
  readonly depths: readonly number[];
  /** Of SDI, the rasters that it sends; empty where any raster does. */
  readonly rasters: readonly SdiRaster[];
  readonly source: string;
  readonly howKnown: string;
}

interface Row {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly cables: number;
  readonly rawGbps: number;
  readonly carries: readonly number[];
  readonly clockMHz?: number;
  readonly depths?: readonly number[];
  readonly rasters?: readonly SdiRaster[];
  readonly source: string;
  readonly howKnown: string;
}

const readRow = ({ rawGbps, carries, clockMHz, ...row }: Row): VideoLink => ({
  ...row,
  kind: row.kind as VideoLink['kind'],
  payloadBps: (Math.round(rawGbps * 1e9) * carries[0]!) / carries[1]!,
  rawBps: Math.round(rawGbps * 1e9),
  carries: [carries[0]!, carries[1]!],
  characterHz: clockMHz === undefined ? null : clockMHz * 1e6,
  depths: row.depths ?? [8, 10, 12],
  rasters: row.rasters ?? [],
});

/** The links of the published table, family by family, the slowest of each first. */
export const videoLinks: readonly VideoLink[] = (table.links as readonly Row[]).map(readRow);

const { sdi, packets, displayPort } = table;

/** Share of a DisplayPort link that spread spectrum and its reference clock may take. */
export const displayPortFigures = { clockLossShare: displayPort.clockLossShare, source: displayPort.source } as const;

/** SDI in RGB 4:4:4: rates it runs at, bits a pixel, and the clock of 1080 lines at up to 30 frames a second. */
export const sdiFigures = {
  rates: sdi.rates,
  bitsAPixel: sdi.bitsAPixel,
  clockHz: sdi.clockMHz * 1e6,
  lines: sdi.lines,
  fps: sdi.fps,
  source: sdi.source,
} as const;

/** ST 2110-20: octets of samples in a packet, octets round them on the wire, and pixel groups of RGB by depth. */
export const packetFigures = {
  samplesOctets: packets.samplesOctets,
  overheadOctets: packets.overheadOctets,
  pixelGroups: packets.pixelGroups,
  source: packets.source,
} as const;
