import { RemoveButton } from '../../bench/ListButtons';
import { useActions } from '../../state/use-bench';
import { usePlan } from '../../state/use-plan';
import { Button } from '../../widgets/Button';

/** Builds kept beside the plan; each can take the place of the wall that stands. */
export function Alternatives() {
  const alternatives = usePlan((plan) => plan.alternatives);
  const { dispatch } = useActions();
  if (alternatives.length === 0) return null;
  return (
    <fieldset className="group">
      <legend>Kept alternatives</legend>
      <ul className="stops">
        {alternatives.map(({ id, name }, index) => (
          <li key={id}>
            {name}{' '}
            <Button small onClick={() => dispatch({ name: 'use-alternative', args: { id } })}>
              Use {name}
            </Button>{' '}
            <RemoveButton list={['alternatives']} index={index} label={`alternative ${name}`}>
              Forget {name}
            </RemoveButton>
          </li>
        ))}
      </ul>
    </fieldset>
  );
}
