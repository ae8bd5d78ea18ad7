import { pageOfField } from '../state/page-of-field';
import { pageById } from '../state/pages';

/** Units that end the names of fields. */
const unitEnds = /(Mm|M2|Kpa|Kg|Gbps|Mbps|Deg|Nits|Hz|Ma|[AVWK])$/;

function wordsOf(key: string): string {
  return key
    .replace(unitEnds, '')
    .replace(/([a-z0-9])([A-Z])/g, '$1 $2')
    .toLowerCase();
}

/** The path of a field as a reader takes it: 'heat.roomRiseK' is 'Heat: room rise', 'walls[0].path[2].columns' 'Walls: 1, path 3, columns'. */
export function fieldWords(path: string): string {
  const page = pageOfField(path);
  const [group = '', ...keys] = path.split(/\.|(?=\[)/);
  const words: string[] = [];
  for (const key of keys) {
    const place = /^\[(\d+)\]$/.exec(key)?.[1];
    if (place === undefined) words.push(wordsOf(key));
    else words.push(`${words.pop() ?? ''} ${Number(place) + 1}`.trim());
  }
  const title = page ? pageById(page).title : 'Plan';
  const own = page && group !== 'signal' && keys.length > 0 ? [] : [wordsOf(group)];
  return `${title}: ${[...own, ...words].join(', ')}`;
}
