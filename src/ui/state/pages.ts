import type { ChapterId } from '../../calc/chapter';

/** Pages of the book in the order in which a plan is read; named as the chapters they show. */
export type PageId =
  | 'wish'
  | 'summary'
  | 'panels'
  | 'walls'
  | 'ceilings'
  | 'picture'
  | 'zones'
  | 'runs'
  | 'nodes'
  | 'links'
  | 'faults'
  | 'outputs'
  | 'power'
  | 'heat'
  | 'masses'
  | 'materials'
  | 'crew'
  | 'labels'
  | 'revisions'
  | 'log';

export interface Page {
  readonly id: PageId;
  readonly title: string;
  /** One sentence under the title: what the page answers. */
  readonly lede: string;
  readonly group: 'Shape' | 'Signal' | 'Supply' | 'Structure' | 'Build' | null;
  /** Chapters of the evaluation whose checks and working stand on it; the summary shows all and owns none. */
  readonly chapters: readonly ChapterId[];
}

export const pages: readonly Page[] = [
  {
    id: 'wish',
    title: 'Wish',
    lede: 'What is wanted and what there is: the hall, the ring, the rates, the money and the equipment.',
    group: null,
    chapters: ['wish'],
  },
  {
    id: 'summary',
    title: 'Summary',
    lede: 'The whole plan on one page: its figures, and every check with the worst first.',
    group: null,
    chapters: [],
  },
  {
    id: 'panels',
    title: 'Panels',
    lede: 'The catalogue that this plan carries: what each sheet says, and what follows from it.',
    group: 'Shape',
    chapters: ['panels'],
  },
  {
    id: 'walls',
    title: 'Walls',
    lede: 'The path of columns, the bands of rows, and the ring that comes out of them.',
    group: 'Shape',
    chapters: ['walls'],
  },
  {
    id: 'ceilings',
    title: 'Ceiling',
    lede: 'The lattice of panels overhead, its outline, its holes and the heights of its travel.',
    group: 'Shape',
    chapters: ['ceilings'],
  },
  {
    id: 'picture',
    title: 'Picture',
    lede: 'Frame rates and bit depths, what else the stage must serve, and what would have to change to fit.',
    group: 'Signal',
    chapters: ['picture'],
  },
  {
    id: 'zones',
    title: 'Zones',
    lede: 'The rectangle that each processor drives, and every width that would work.',
    group: 'Signal',
    chapters: ['zones'],
  },
  {
    id: 'runs',
    title: 'Runs',
    lede: 'Which panels hang on which port, in what order, and whether each port can carry them.',
    group: 'Signal',
    chapters: ['ports', 'runs'],
  },
  {
    id: 'nodes',
    title: 'Nodes',
    lede: 'Which node feeds which processors, the canvas it sends, how late the picture is, and what keeps all in step.',
    group: 'Signal',
    chapters: ['nodes'],
  },
  {
    id: 'links',
    title: 'Links',
    lede: 'How the picture is timed on its way to the processors, and which links carry it with how much left.',
    group: 'Signal',
    chapters: ['links'],
  },
  {
    id: 'faults',
    title: 'What goes dark',
    lede: 'What one failure takes along, and, where panels are dark, which part most likely did it.',
    group: 'Signal',
    chapters: ['faults'],
  },
  {
    id: 'outputs',
    title: 'Outputs',
    lede: 'What a render engine and a crew start from: the pixel map, the geometry and a test picture of every node.',
    group: 'Signal',
    chapters: [],
  },
  {
    id: 'power',
    title: 'Power',
    lede: 'Circuits, distros and legs, and the current that each of them carries.',
    group: 'Supply',
    chapters: ['power'],
  },
  {
    id: 'heat',
    title: 'Heat',
    lede: 'What the stage gives off, and the air or the cooling that takes it away.',
    group: 'Supply',
    chapters: ['heat'],
  },
  {
    id: 'masses',
    title: 'Masses',
    lede: 'What each column and each surface weighs, and what that puts on the floor.',
    group: 'Structure',
    chapters: ['masses'],
  },
  {
    id: 'materials',
    title: 'Materials',
    lede: 'Everything that can be counted: needed, spare, owned and still to get.',
    group: 'Build',
    chapters: ['materials'],
  },
  {
    id: 'crew',
    title: 'Crew set',
    lede: 'Everything that the crew gets on paper: drawings to scale, schedules, check sheets; as one PDF, or straight to a printer.',
    group: 'Build',
    chapters: [],
  },
  {
    id: 'labels',
    title: 'Labels',
    lede: 'A label for both ends of every cable: from, to and length class, with a code that leads to its way.',
    group: 'Build',
    chapters: [],
  },
  {
    id: 'revisions',
    title: 'Revisions',
    lede: 'What was given to the crew and when, which names that holds, and what changed between any two states of the plan.',
    group: 'Build',
    chapters: [],
  },
  {
    id: 'log',
    title: 'Build log',
    lede: 'What stands, is wired, powered and tested, by whom and since when, and how far each part of the stage is.',
    group: 'Build',
    chapters: [],
  },
];

export function pageById(id: PageId): Page {
  return pages.find((page) => page.id === id)!;
}

export function isPageId(text: string): text is PageId {
  return pages.some((page) => page.id === text);
}
