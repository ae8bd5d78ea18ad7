import fontkit from '@cantoo/fontkit';
import { PDFDocument, PDFName, type PDFPage, PDFString, PrintScaling } from '@cantoo/pdf-lib';
import type { Page, PageFace, PageLink } from '../sheets/pages/page';
import { pageToPdfContent, pointsAMm } from './page-to-pdf-content';
import { embedPdfFace, type PdfFace } from './pdf-face';

/** TrueType files of the faces that pages are written in. */
export type PrintFonts = Readonly<Record<PageFace, Uint8Array>>;

export interface PdfInfo {
  readonly title: string;
  /** '2026-11-25': written into the file as the day on which it was made; null: the file does not say. */
  readonly date: string | null;
}

const names: Readonly<Record<PageFace, string>> = { sans: 'S', strong: 'B', mono: 'M' };

/**
 * Pages as one PDF file: their exact sizes, lines and texts as such, the signs used of each face embedded. A reader is asked
 * to print it at its actual size. The same pages give the same bytes.
 */
export async function pagesToPdf(pages: readonly Page[], fonts: PrintFonts, info: PdfInfo): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false });
  document.registerFontkit(fontkit);
  sayWhatItIs(document, info);
  const faces: Readonly<Record<PageFace, PdfFace>> = {
    sans: await embedPdfFace(document, names.sans, fonts.sans),
    strong: await embedPdfFace(document, names.strong, fonts.strong),
    mono: await embedPdfFace(document, names.mono, fonts.mono),
  };
  const { context } = document;
  const made = pages.map((page) => {
    const sheet = document.addPage([page.widthMm * pointsAMm, page.heightMm * pointsAMm]);
    const content = context.flateStream(pageToPdfContent(page, faces));
    sheet.node.set(PDFName.of('Contents'), context.register(content));
    addLinks(sheet, page);
    return sheet;
  });
  // One dictionary for all pages: which signs have rims is known when the last page is written.
  const all = Object.values(faces);
  const resources = context.register(
    context.obj({
      Font: Object.fromEntries(all.map(({ name, ref }) => [name, ref])),
      XObject: Object.fromEntries(all.flatMap(({ rimForms }) => [...rimForms()])),
    }),
  );
  for (const sheet of made) sheet.node.set(PDFName.of('Resources'), resources);
  return document.save({ addDefaultPage: false, updateFieldAppearances: false });
}

function sayWhatItIs(document: PDFDocument, { title, date }: PdfInfo): void {
  document.setTitle(title, { showInWindowTitleBar: true });
  document.setLanguage('en');
  document.setProducer('Voussoir');
  document.setCreator('Voussoir');
  if (date !== null) {
    const day = new Date(`${date}T00:00:00Z`);
    document.setCreationDate(day);
    document.setModificationDate(day);
  }
  const preferences = document.catalog.getOrCreateViewerPreferences();
  preferences.setPrintScaling(PrintScaling.None);
  preferences.setPickTrayByPDFSize(true);
}

function addLinks(sheet: PDFPage, { heightMm, items }: Page): void {
  const { context } = sheet.doc;
  const links = items.filter((item): item is PageLink => item.kind === 'link');
  if (links.length === 0) return;
  const annotations = links.map(({ box: { leftMm, topMm, rightMm, bottomMm }, url }) =>
    context.register(
      context.obj({
        Type: 'Annot',
        Subtype: 'Link',
        Rect: [leftMm, heightMm - bottomMm, rightMm, heightMm - topMm].map((mm) => mm * pointsAMm),
        Border: [0, 0, 0],
        A: { Type: 'Action', S: 'URI', URI: PDFString.of(url.replace(/[()\\]/g, '\\$&')) },
      }),
    ),
  );
  sheet.node.set(PDFName.of('Annots'), context.obj(annotations));
}
