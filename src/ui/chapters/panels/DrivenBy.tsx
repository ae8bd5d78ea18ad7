import type { Path } from '../../../plan/commands/path';
import { AddButton, RemoveButton } from '../../bench/ListButtons';
import { PlanCount } from '../../bench/PlanFields';
import { usePlan } from '../../state/use-plan';
import { usePlanField } from '../../state/use-plan-field';

/** Processors that drive a panel, with the pixels a port for each pair. */
export function DrivenBy({ path }: { readonly path: Path }) {
  const { value } = usePlanField<readonly { readonly processorId: string }[]>(path, 'driven by');
  const processors = usePlan((plan) => plan.catalogue.processors);
  const others = processors.filter(({ id }) => !value.some(({ processorId }) => processorId === id));
  const nameOf = (id: string) =>
    processors.find((processor) => processor.id === id)?.name ?? `${id} (not in the catalogue)`;
  return (
    <fieldset className="group">
      <legend>Driven by</legend>
      {value.map(({ processorId }, index) => (
        <div className="row-group" key={processorId}>
          <PlanCount
            path={[...path, index, 'portPixels']}
            label={`${nameOf(processorId)}: pixels a port at 60 Hz and 8 bit`}
            absent="as its sheet"
            least={1}
          />
          <RemoveButton list={path} index={index} label="driven by">
            Remove {nameOf(processorId)}
          </RemoveButton>
        </div>
      ))}
      {others.map(({ id, name }) => (
        <AddButton
          key={id}
          list={path}
          index={value.length}
          value={{ processorId: id, portPixels: null }}
          label="driven by"
        >
          Add {name}
        </AddButton>
      ))}
    </fieldset>
  );
}
