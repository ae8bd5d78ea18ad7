import type { ReactNode } from 'react';
import type { Path } from '../../plan/commands/path';
import { usePlan } from '../state/use-plan';
import { AddButton, RemoveButton } from './ListButtons';

interface OwnOfSurfaceProps {
  /** The group of the plan whose list of surfaces it is. */
  readonly of: 'feed' | 'signal';
  readonly surfaceId: string;
  readonly name: string;
  /** What the surface gets of its own, in words: 'feed'. */
  readonly what: string;
  /** What it begins with; null where it cannot be given any. */
  readonly first: object | null;
  /** The fields, by where the surface's entry stands in the plan. */
  readonly children: (path: Path) => ReactNode;
}

/** What one surface has of its own where it differs from the stage; or a way to give it that. */
export function OwnOfSurface({ of, surfaceId, name, what, first, children }: OwnOfSurfaceProps) {
  const index = usePlan((plan) => plan[of].bySurface.findIndex((entry) => entry.surfaceId === surfaceId));
  const count = usePlan((plan) => plan[of].bySurface.length);
  const list = [of, 'bySurface'] as const;
  if (index < 0) {
    return first === null ? null : (
      <AddButton list={list} index={count} value={{ surfaceId, ...first }} label={`${what} of ${name}`}>
        Give {name} its own
      </AddButton>
    );
  }
  return (
    <fieldset className="group">
      <legend>{name}</legend>
      <div className="fields">{children([...list, index])}</div>
      <RemoveButton list={list} index={index} label={`own ${what} of ${name}`}>
        As the stage
      </RemoveButton>
    </fieldset>
  );
}
