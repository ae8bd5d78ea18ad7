import { papers } from '../../../sheets/pages/papers';
import type { Inks } from '../../../sheets/pages/place-drawing';
import { counted } from '../../../units/counted';
import { ChoiceField } from '../../widgets/ChoiceField';
import { SegmentChoice } from '../../widgets/SegmentChoice';
import { chooseCrew, choosePart, useCrewChoice } from './crew-choice';
import type { CrewPages } from './use-crew-pages';

const inks: readonly { readonly value: Inks; readonly label: string }[] = [
  { value: 'colour', label: 'Colour' },
  { value: 'black', label: 'Black and white' },
];

/** Paper, inks, and which parts are printed, each with its number of pages. */
export function CrewChoices({ asked, parts }: Pick<CrewPages, 'asked' | 'parts'>) {
  const { leftOut } = useCrewChoice();
  return (
    <>
      <div className="fields">
        <ChoiceField
          label="Paper"
          value={asked.paper}
          choices={papers.map(({ id, name }) => ({ value: id, label: name }))}
          onCommit={(paper) => {
            chooseCrew({ paper });
            return null;
          }}
        />
        <div className="field">
          <span>Inks</span>
          <SegmentChoice
            label="Inks"
            value={asked.inks}
            choices={inks}
            onChoose={(chosen) => chooseCrew({ inks: chosen })}
          />
        </div>
      </div>
      <fieldset className="part-choice">
        <legend>Parts</legend>
        {parts.map(({ id, title, pages }) => (
          <label key={id}>
            <input
              type="checkbox"
              checked={!leftOut.has(id)}
              onChange={(event) => choosePart(id, event.target.checked)}
            />
            <span>{title}</span>
            <span className="figure">{pages === null ? '' : counted(pages, 'page')}</span>
          </label>
        ))}
      </fieldset>
    </>
  );
}
