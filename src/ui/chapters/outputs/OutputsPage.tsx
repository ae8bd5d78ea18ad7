import { useMemo } from 'react';
import { schedulePixelMap } from '../../../sheets/schedule-pixel-map';
import { counted } from '../../../units/counted';
import { ChapterPage, ChapterSection } from '../../bench/ChapterPage';
import { PlanSchedule } from '../../bench/PlanSchedule';
import { SearchProgress } from '../../bench/SearchProgress';
import { useOutputFile } from '../../bench/use-output-file';
import { showStagePicture, useStagePicture } from '../../state/stage-picture';
import { useActions } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { EmptyState } from '../../widgets/EmptyState';
import { SwitchField } from '../../widgets/SwitchField';
import { DrawingFiles } from './DrawingFiles';
import { NodePictures } from './NodePictures';
import { OutputFiles } from './OutputFiles';
import { StagePictureFile } from './StagePictureFile';
import { useFileSizes } from './use-file-sizes';
import './outputs.css';

/** What a render engine and a crew start from: pixel map, geometry and test pictures, looked at and saved. */
export function OutputsPage() {
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces);
  const zones = useEvaluation((evaluation) => evaluation.zones.results.zones);
  const runs = useEvaluation((evaluation) => evaluation.runs.results);
  const fed = useEvaluation((evaluation) => evaluation.nodes.results);
  const map = useMemo(() => schedulePixelMap({ surfaces, zones, runs }, fed), [surfaces, zones, runs, fed]);
  const { ask, label, search, share } = useOutputFile();
  const sizeOf = useFileSizes();
  return (
    <ChapterPage
      page="outputs"
      given={<StagePictureSwitch />}
      result={
        surfaces.total === 0 ? (
          <EmptyState title="There is no panel yet, and so nothing to give out." />
        ) : (
          <>
            <OutputFiles map={map} ask={ask} sizeOf={sizeOf} />
            {label !== null && <SearchProgress of={search} label={label} share={share} />}
            <ChapterSection title="Drawings" note="DXF in millimetres at full size, SVG at 1:50">
              <DrawingFiles />
            </ChapterSection>
            <ChapterSection title="Picture of the stage" note="on light paper, whatever the theme">
              <StagePictureFile />
            </ChapterSection>
            <ChapterSection title="Test pictures" note={`${counted(fed.nodes.length, 'node')}, each at its exact size`}>
              {fed.nodes.length === 0 ? (
                <EmptyState title="No node feeds a panel yet, and so there is no picture." />
              ) : (
                <NodePictures nodes={fed.nodes} ask={ask} sizeOf={sizeOf} />
              )}
            </ChapterSection>
          </>
        )
      }
      schedule={surfaces.total > 0 && <PlanSchedule schedule={map} />}
      scheduleNote="pixel map, panel by panel"
    />
  );
}

/** Puts the test pictures onto the model of the stage, and the model into view. */
function StagePictureSwitch() {
  const { setDrawing } = useActions();
  const isShown = useStagePicture();
  return (
    <div className="fields">
      <SwitchField
        label="Test picture on the stage"
        value={isShown}
        onCommit={(wanted) => {
          showStagePicture(wanted);
          if (wanted) setDrawing({ view: 'stage', follows: false });
          return null;
        }}
      />
    </div>
  );
}
