import type { Build } from '../../../calc/finder/build';
import { labelCommand } from '../../../plan/commands';
import { freshId } from '../../../plan/fresh-id';
import { useSay } from '../../bench/notice-context';
import { useActions, useBenchStore } from '../../state/use-bench';
import { Button } from '../../widgets/Button';

/** Puts a build in place of the first wall, or keeps it beside the plan; says what was dropped for it. */
export function BuildButtons({ build, isCurrent }: { readonly build: Build; readonly isCurrent: boolean }) {
  const { store } = useBenchStore();
  const { dispatch } = useActions();
  const say = useSay();
  const name = `${build.panelName}, ${build.columns} columns of ${build.rows}`;

  function use(): void {
    const label = labelCommand(store.getState().plan, build.command);
    const outcome = dispatch(build.command);
    say('refused' in outcome ? outcome.refused : `Done: ${label}. Undo takes it back.`);
  }

  function keep(): void {
    if (build.command.name !== 'use-build') return;
    const { wall } = build.command.args;
    const id = freshId(store.getState().plan, 'alternative');
    const outcome = dispatch({ name: 'keep-alternative', args: { id, name, wall } });
    say('refused' in outcome ? outcome.refused : `${name} is kept as an alternative: it stands on the page Walls.`);
  }

  return (
    <>
      <Button small look="primary" disabled={!isCurrent} aria-label={`Use ${name}`} onClick={use}>
        Use
      </Button>{' '}
      <Button small disabled={!isCurrent} aria-label={`Keep ${name} as an alternative`} onClick={keep}>
        Keep
      </Button>
    </>
  );
}
