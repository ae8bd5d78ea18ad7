import { memo, type RefObject, useMemo } from 'react';
import { findOpening } from '../../../sheets/find-opening';
import { placeHall } from '../../../sheets/place-hall';
import type { StageParts } from '../../../sheets/stage-parts';
import { Company } from './Company';
import type { CameraView } from './camera-views';
import { cardCorners } from './card-corners';
import { Daylight } from './Daylight';
import { Floor } from './Floor';
import { hallSegments } from './hall-segments';
import { InkLines } from './InkLines';
import { Orbit, type OrbitHandle } from './Orbit';
import { outlookOf } from './outlook';
import { PanelCards } from './PanelCards';
import { rimSegments } from './rim-segments';
import { stageExtent } from './stage-extent';
import { standingPersons } from './standing-persons';
import type { Inks } from './use-inks';
import { vehicleCards } from './vehicle-cards';

interface SceneProps {
  readonly parts: StageParts;
  readonly tints: Uint8Array;
  readonly inks: Inks;
  readonly orbit: RefObject<OrbitHandle | null>;
  readonly onLook?: (view: CameraView) => void;
}

/** The card model: panels, their rims in ink, the hall, a person and a vehicle on a sheet of paper. */
export const Scene = memo(function Scene({ parts, tints, inks, orbit, onLook }: SceneProps) {
  const { surfaces, walls, hall, vehicle, lengths } = parts;
  const extent = useMemo(() => stageExtent({ surfaces }), [surfaces]);
  const outlook = useMemo(() => outlookOf({ walls }), [walls]);
  const rims = useMemo(() => joined(surfaces.surfaces.map(rimSegments)), [surfaces]);
  const hallEdges = useMemo(() => hallSegments(placeHall(hall, walls), hall.clearHeightMm), [hall, walls]);
  const company = useMemo(() => {
    const opening = findOpening(walls);
    return {
      persons: standingPersons(opening, outlook, extent),
      vehicle: vehicleCards(vehicle, opening, outlook, extent),
    };
  }, [extent, outlook, vehicle, walls]);
  const outline = useMemo(() => joined([rims, cardCorners(company.vehicle)]), [rims, company]);
  return (
    <>
      <color attach="background" args={[inks.paper]} />
      <Daylight extent={extent} />
      <Floor extent={extent} lengths={lengths} inks={inks} />
      {surfaces.surfaces.map((table, s) =>
        table.count === 0 ? null : (
          <PanelCards key={table.surfaceId} table={table} tints={tints} offset={surfaces.offsets[s]!} inks={inks} />
        ),
      )}
      <InkLines segments={rims} colour={inks.ink} widthPx={1.8} />
      <InkLines segments={hallEdges} colour={inks.soft} widthPx={1} />
      <Company persons={company.persons} vehicle={company.vehicle} inks={inks} />
      <Orbit extent={extent} outlook={outlook} outline={outline} handle={orbit} onLook={onLook} />
    </>
  );
});

function joined(pieces: readonly Float32Array[]): Float32Array {
  const all = new Float32Array(pieces.reduce((length, piece) => length + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}
