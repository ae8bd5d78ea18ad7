import { useBench } from '../state/use-bench';
import { useDesk } from '../storage/use-desk';
import { StatusGlyph } from '../widgets/StatusGlyph';
import { keptWords } from './kept-words';

/** Where the document is kept, always in sight. */
export function KeptState() {
  const kept = useDesk((state) => state.kept);
  const filed = useDesk((state) => state.filed);
  const follows = useBench((state) => state.follows);
  const locale = useBench((state) => state.locale);
  const { text, marked } = keptWords(kept, follows, filed, locale);
  return (
    <span className={marked ? 'kept is-watch' : 'kept'}>
      {marked && <StatusGlyph status="watch" silent />}
      {text}
    </span>
  );
}
