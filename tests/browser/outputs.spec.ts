import { csvParse } from 'd3-dsv';
import { unzipSync } from 'fflate';
import { validateBytes } from 'gltf-validator';
import { PNG } from 'pngjs';
import readWorkbook from 'read-excel-file/node';
import { readDxf } from '../files/read-dxf';
import { readGlb } from '../files/read-glb';
import { cornersOfRow, readPng } from '../files/read-png';
import { readSvg } from '../files/read-svg';
import { goToChapter } from './support/go-to-chapter';
import { figuresAreThere, openWorkbench } from './support/open-workbench';
import { dropFile, fixture, savedBy } from './support/plan-file';
import { expect, test } from './support/test';

test('the whole set is made beside the page and saved: pictures at their exact size, borders where the pixel map has panels', async ({
  page,
}) => {
  await openWorkbench(page);
  await dropFile(page, fixture('plans/flat.json'));
  await figuresAreThere(page);
  await goToChapter(page, 'Outputs');
  const { name, bytes } = await savedBy(page, page.getByRole('button', { name: 'Save the whole set' }));
  expect(name).toMatch(/outputs\.zip$/);
  const files = unzipSync(bytes);
  const rows = csvParse(new TextDecoder().decode(files['pixel-map.csv']));
  expect(rows.length).toBeGreaterThan(50);
  for (let i = 0; i < 10; i++) {
    const row = rows[Math.floor((i * (rows.length - 1)) / 9)]!;
    const { rgb } = readPng(files[`pictures/${row.node}.png`]!);
    const { outer, inner } = cornersOfRow(row);
    for (const corner of outer) expect(rgb(...corner)).toEqual([255, 255, 255]);
    for (const corner of inner) expect(rgb(...corner)).not.toEqual([255, 255, 255]);
  }
  const { issues } = await validateBytes(files['stage.glb']!);
  expect([issues.numErrors, issues.numWarnings]).toEqual([0, 0]);
});

test('one node’s picture, the pixel map and the geometry are saved each by its button', async ({ page }) => {
  await openWorkbench(page);
  await dropFile(page, fixture('plans/flat.json'));
  await figuresAreThere(page);
  await goToChapter(page, 'Outputs');
  const picture = await savedBy(page, page.getByRole('button', { name: 'Save the test picture of N1 in 16 bits' }));
  expect(picture.name).toMatch(/N1 16 bit\.png$/);
  const { width, height, depth } = PNG.sync.read(picture.bytes) as PNG & { depth: number };
  expect(depth).toBe(16);
  await expect(page.getByRole('main')).toContainText(`${width} × ${height}`);
  const map = await savedBy(page, page.getByRole('button', { name: 'Save the pixel map as CSV' }));
  expect(map.bytes.toString('utf8').split('\r\n')[0]).toBe(
    'panel,surface,column,row,canvasX,canvasY,width,height,turn,node,processor,breakout,port,place',
  );
  const row = page.getByRole('region', { name: 'Files for the whole stage' }).getByRole('row', { name: /^LED faces/ });
  await expect(row).toContainText(/\d kB/);
  const geometry = await savedBy(page, page.getByRole('button', { name: 'Save the geometry as glTF' }));
  // What was said of its size before.
  await expect(row).toContainText(`${Math.ceil(geometry.bytes.length / 1000)} kB`);
  expect(geometry.bytes.toString('latin1', 0, 4)).toBe('glTF');
  const stage = await savedBy(page, page.getByRole('button', { name: 'Save the whole stage as glTF' }));
  expect(stage.name).toMatch(/whole-stage\.glb$/);
  // 8 columns of 8 panels; the ceiling-less wall has no opening, and so no vehicle.
  expect(readGlb(stage.bytes).json.nodes.filter(({ name }) => /^C\d+ R\d+$/.test(name))).toHaveLength(64);
  await expect(page.getByRole('button', { name: 'Save the whole stage with the vehicle as glTF' })).toBeHidden();
  const obj = unzipSync((await savedBy(page, page.getByRole('button', { name: 'Save the geometry as OBJ' }))).bytes);
  expect(Object.keys(obj)).toEqual(['stage.obj', 'stage.mtl']);
});

test('all schedules are saved as one spreadsheet, a sheet each', async ({ page }) => {
  await openWorkbench(page);
  await dropFile(page, fixture('plans/flat.json'));
  await figuresAreThere(page);
  await goToChapter(page, 'Outputs');
  const { name, bytes } = await savedBy(page, page.getByRole('button', { name: 'Save all schedules as spreadsheet' }));
  expect(name).toMatch(/schedules\.xlsx$/);
  const sheets = await readWorkbook(bytes);
  await expect(page.getByRole('main')).toContainText(`${sheets.length} tables`);
  // Eight columns of eight panels below one row of titles.
  expect(sheets.find(({ sheet }) => sheet === 'Panels')!.data).toHaveLength(65);
});

test('a drawing is saved as DXF in millimetres and as SVG, each by its button', async ({ page }) => {
  await openWorkbench(page);
  await dropFile(page, fixture('plans/flat.json'));
  await figuresAreThere(page);
  await goToChapter(page, 'Outputs');
  const dxf = await savedBy(page, page.getByRole('button', { name: 'Save A unrolled, from behind as DXF' }));
  expect(dxf.name).toMatch(/A-unrolled-from-behind\.dxf$/);
  const { header, polylines } = readDxf(dxf.bytes.toString('utf8'));
  expect(header.$INSUNITS).toBe(4);
  // 8 columns of 600 mm.
  const edge = polylines.filter(({ layer }) => layer === 'wall').flatMap(({ vertices }) => vertices.map(({ x }) => x));
  expect(Math.max(...edge) - Math.min(...edge)).toBe(4800);
  const svg = await savedBy(page, page.getByRole('button', { name: 'Save Stage from above as SVG' }));
  expect(svg.name).toMatch(/from-above\.svg$/);
  expect(readSvg(svg.bytes.toString('utf8')).length).toBeGreaterThan(10);
});

test('previews are painted, and the switch puts the pictures on the model and takes them off', async ({ page }) => {
  await openWorkbench(page);
  await goToChapter(page, 'Outputs');
  const preview = page.getByRole('img', { name: 'Test picture of N1' });
  await expect(preview).toBeVisible();
  // Painted: more than one colour in the middle of it.
  const colours = () =>
    preview.evaluate((canvas: HTMLCanvasElement) => {
      const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
      return new Set(new Uint32Array(data.buffer)).size;
    });
  await expect.poll(colours).toBeGreaterThan(50);
  await page.getByRole('switch', { name: 'Test picture on the stage' }).check();
  const model = page.getByRole('img', { name: /^The stage as a model/ });
  // A node for each of the six zones of the wall, and one for the whole ceiling.
  await expect(model).toHaveAttribute('data-pictures', '7', { timeout: 30_000 });
  await page.getByRole('switch', { name: 'Test picture on the stage' }).uncheck();
  await expect(model).not.toHaveAttribute('data-pictures');
});

test('a picture of the stage has the size that is asked, on light paper in the dark theme too', async ({ page }) => {
  await openWorkbench(page);
  await dropFile(page, fixture('plans/flat.json'));
  await figuresAreThere(page);
  await page.getByRole('button', { name: 'Theme', exact: true }).click();
  await page.getByRole('menuitem', { name: 'Dark' }).click();
  await goToChapter(page, 'Outputs');
  // Wider than what is drawn at once.
  for (const [label, pixels] of [
    ['Width, px', '2600'],
    ['Height, px', '700'],
  ] as const) {
    await page.getByLabel(label).fill(pixels);
    await page.getByLabel(label).press('Enter');
  }
  await page.getByLabel('Seen from', { exact: true }).selectOption({ label: 'the corner' });
  const { name, bytes } = await savedBy(
    page,
    page.getByRole('button', { name: 'Save the picture of the stage as PNG' }),
  );
  expect(name).toMatch(/stage 2600 x 700\.png$/);
  const { width, height, data } = PNG.sync.read(bytes);
  expect([width, height]).toEqual([2600, 700]);
  const rgb = (x: number, y: number) => [...data.subarray((y * width + x) * 4, (y * width + x) * 4 + 3)];
  // The paper of the light theme, on both sides of the seam between the parts.
  for (const x of [2, 2046, 2049, 2597]) expect(Math.min(...rgb(x, 2)), `${x}`).toBeGreaterThan(225);
  const dark = Array.from({ length: width * height }, (_, i) => data[i * 4 + 1]!).filter((green) => green < 90).length;
  // Rims in ink.
  expect(dark).toBeGreaterThan(1000);
});

test('making the set can be stopped, and the page goes on', async ({ page }) => {
  await openWorkbench(page);
  await dropFile(page, fixture('plans/ring-feet.json'));
  await figuresAreThere(page);
  await goToChapter(page, 'Outputs');
  await expect(page.getByRole('img', { name: /^Test picture of N/ })).toHaveCount(8, { timeout: 30_000 });
  await page.getByRole('button', { name: 'Save the whole set' }).click();
  await page.getByRole('button', { name: 'Stop' }).click();
  await expect(page.getByText('Stopped before it was done.')).toBeVisible();
});
