import type { ReactNode } from 'react';
import type { Path } from '../../plan/commands/path';
import { useActions } from '../state/use-bench';
import { Button } from '../widgets/Button';
import { useSay } from './notice-context';

interface ListButtonProps {
  /** Path of the list. */
  readonly list: Path;
  readonly index: number;
  /** What the history calls it. */
  readonly label: string;
  readonly children: ReactNode;
}

/** Puts an entry into a list of the plan; says why where it is refused. */
export function AddButton({ list, index, value, label, children }: ListButtonProps & { readonly value: unknown }) {
  const { dispatch } = useActions();
  const say = useSay();
  const add = () => {
    const outcome = dispatch({ name: 'insert', args: { path: [...list], index, value, label } });
    if ('refused' in outcome) say(outcome.refused);
  };
  return (
    <Button small onClick={add}>
      {children}
    </Button>
  );
}

/** Takes an entry out of a list of the plan; says why where it is refused. */
export function RemoveButton({ list, index, label, children }: ListButtonProps) {
  const { dispatch } = useActions();
  const say = useSay();
  const remove = () => {
    const outcome = dispatch({ name: 'remove', args: { path: [...list], index, label } });
    if ('refused' in outcome) say(outcome.refused);
  };
  return (
    <Button small onClick={remove}>
      {children}
    </Button>
  );
}
