import type { LabelGrid } from '../sheets/labels/label-grid';
import type { LabelledCable } from '../sheets/labels/labelled-cable';
import { type LabelOptions, layOutLabels } from '../sheets/labels/lay-out-labels';
import type { NamedFile } from './files-to-zip';
import { type PrintFonts, pagesToPdf } from './pages-to-pdf';

/**
 * Sheets of labels as one file: 'labels.pdf'. It names no day, so that the same plan gives the same bytes on any. A grid
 * without room for a label gives a file without a page.
 */
export async function labelsPdf(
  planName: string,
  cables: readonly LabelledCable[],
  grid: LabelGrid,
  options: LabelOptions,
  fonts: PrintFonts,
): Promise<NamedFile> {
  const sheets = layOutLabels(cables, grid, options);
  const pages = Array.from({ length: sheets?.count ?? 0 }, (_, index) => sheets!.page(index));
  return { name: 'labels.pdf', bytes: await pagesToPdf(pages, fonts, { title: `${planName}, labels`, date: null }) };
}
