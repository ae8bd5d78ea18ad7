import { LineBuilder } from '../line-builder';
import { paperStyle } from '../paper-style';
import type { PagePath } from './page';

/** A triangle with an upright stroke and a point in it, in a square of this side. */
export function cautionMark(leftMm: number, topMm: number, sideMm: number): readonly PagePath[] {
  const x = (share: number) => leftMm + share * sideMm;
  const y = (share: number) => topMm + share * sideMm;
  const rim = new LineBuilder().moveTo(x(0.5), y(0.08)).lineTo(x(0.97), y(0.9)).lineTo(x(0.03), y(0.9)).build(true);
  const sign = new LineBuilder();
  sign.moveTo(x(0.45), y(0.36)).lineTo(x(0.55), y(0.36)).lineTo(x(0.53), y(0.64)).lineTo(x(0.47), y(0.64));
  sign.rectangle(x(0.455), y(0.7), x(0.545), y(0.79));
  const { ink } = paperStyle.pens;
  return [
    {
      kind: 'path',
      lines: rim,
      fill: null,
      stroke: { colour: ink, widthMm: paperStyle.widthsMm.medium, dashesMm: [] },
    },
    { kind: 'path', lines: sign.build(true), fill: ink, stroke: null },
  ];
}
