import type { Check } from '../chapter';
import type { PictureResults } from '../picture/picture-result';

/** Cameras that shoot at once see pictures of their own only where pictures are interleaved. */
export function checkCameras(camerasAtOnce: number, { surfaces }: PictureResults): Check[] {
  const pictures = surfaces.reduce((most, surface) => Math.max(most, surface.mode.pictures), 0);
  if (pictures === 0 || camerasAtOnce <= pictures) return [];
  return [
    {
      id: 'wish.cameras',
      chapter: 'wish',
      severity: 'offer',
      measured: pictures,
      limit: camerasAtOnce,
      unit: 'count',
      where: [
        { kind: 'field', name: 'wish.camerasAtOnce' },
        { kind: 'field', name: 'picture.base.pictures' },
      ],
      sentence:
        'Cameras at once: {limit}; pictures that the stage shows in turn: {measured}. They share what they see.',
    },
  ];
}
