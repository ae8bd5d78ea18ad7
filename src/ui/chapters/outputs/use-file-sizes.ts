import type { FileSize } from '../../../files/measure-files';
import { useBench } from '../../state/use-bench';
import { useSweep } from '../../state/use-sweep';
import { useFormat } from '../../widgets/use-format';
import { sizeWords } from './size-words';

/** How large each file will be, in words, as the worker finds out; nothing before that. */
export function useFileSizes(): (of: FileSize['of']) => string {
  const plan = useBench((state) => state.plan);
  const { items, isCurrent } = useSweep(plan, 'sizes', null);
  const format = useFormat();
  return (of) =>
    isCurrent
      ? sizeWords(
          items.findLast((size) => size.of === of),
          format,
        )
      : '';
}
