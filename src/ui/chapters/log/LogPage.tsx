import { ChapterPage } from '../../bench/ChapterPage';
import { Caution } from '../../widgets/Caution';
import { MarkedStep } from './MarkedStep';
import { ProgressByArea } from './ProgressByArea';
import { RestingThings } from './RestingThings';
import { SendTicks } from './SendTicks';
import { TakeTicks } from './TakeTicks';
import { ThingTable } from './ThingTable';
import './log.css';

/** What the crew has ticked, by area and thing by thing, and the way of ticks in and out. */
export function LogPage() {
  return (
    <ChapterPage
      page="log"
      given={<TakeTicks />}
      resultNote="columns stand, ports are wired and tested, circuits are powered"
      result={
        <>
          <MarkedStep />
          <ProgressByArea />
        </>
      }
      schedule={
        <>
          <ThingTable />
          <RestingThings />
          <SendTicks />
        </>
      }
      scheduleNote="a press on a line picks it"
      caution={
        <Caution>
          A tick says that somebody did a step, not that it holds. Stacking, hanging, bonding and supply are looked over
          and signed for by who is licensed for them, before anything is switched on.
        </Caution>
      }
    />
  );
}
