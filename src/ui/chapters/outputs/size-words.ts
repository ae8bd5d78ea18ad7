import type { FileSize } from '../../../files/measure-files';
import type { Format } from '../../widgets/use-format';

const kilobyte = 1000;
const megabyte = 1_000_000;

/** '343 kB', 'about 7.1 MB'; nothing where it is not known yet. */
export function sizeWords(size: FileSize | undefined, format: Format): string {
  if (size === undefined) return '';
  const words =
    size.bytes < megabyte
      ? `${format(Math.ceil(size.bytes / kilobyte), 'count')} kB`
      : `${(size.bytes / megabyte).toFixed(1)} MB`;
  return size.isExact ? words : `about ${words}`;
}
