import type { VideoLink } from '../../../calc/tables/video-links';

/** Families of links by the names of their standards. */
export const familyWords: Readonly<Record<VideoLink['kind'], string>> = {
  tmds: 'HDMI, TMDS',
  frl: 'HDMI, FRL',
  displayport: 'DisplayPort',
  sdi: 'SDI',
  ethernet: 'ST 2110-20',
};
