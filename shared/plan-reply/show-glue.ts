import type { FoldProgram, GlueStrip } from '../creases/fold-program.ts';
import { glueLength, tapeLength } from '../creases/glue-length.ts';
import { mm } from '../lengths/nanometres.ts';
import { showLength } from '../lengths/show-length.ts';
import type { PlanReply } from './plan-reply.ts';

/** Where a folder is glued, and what tape that takes, in whole millimetres, as a reply gives it. */
export function showGlue({ steps }: FoldProgram): Pick<PlanReply, 'glue' | 'tapeLength'> {
  const glue = steps.filter((step) => step.kind === 'glue');
  return {
    glue: glue.map((step) => ({
      name: step.name,
      strips: step.strips.map(showStrip),
      length: showLength(Math.round(glueLength(step))),
    })),
    tapeLength: showLength(Math.ceil(tapeLength(glue) / mm(1)) * mm(1)),
  };
}

const showStrip = ({ panel, face, to, left, top, right, bottom }: GlueStrip) => ({
  panel,
  face,
  to,
  left: showLength(left),
  top: showLength(top),
  right: showLength(right),
  bottom: showLength(bottom),
});
