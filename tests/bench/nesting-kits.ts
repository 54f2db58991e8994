import type { SolveLinear } from '../../shared/nesting/linear-program.ts';
import { nest, runToEnd } from '../../shared/nesting/nest.ts';
import type { NestInput } from '../../shared/nesting/nest-spec.ts';
import { packStrip } from '../../shared/nesting/pack-strip.ts';
import { boxByPotpack, sheetsByMaxRects } from './other-packers.ts';

/** One kit, nested here and by packers of other authors. */
export interface KitFigures {
  readonly sheets: number;
  readonly bound: number;
  readonly proved: boolean;
  readonly byMaxRects: number;
  /** Of a strip as wide as potpack's box. */
  readonly height: number;
  readonly byPotpack: number;
  readonly ms: number;
}

export function compareKit(
  spec: NestInput,
  solve: SolveLinear,
  limits: { readonly evaluations?: number; readonly packings: number },
): KitFigures {
  const evaluations = limits.evaluations === undefined ? {} : { evaluations: limits.evaluations };
  const started = performance.now();
  const { sheets, bound, proved } = runToEnd(nest({ ...spec, ...evaluations }, solve));
  const ms = performance.now() - started;
  const box = boxByPotpack(spec);
  const boxes = spec.pieces.map(({ width, height, count, turns = 'quarter' }) => ({
    width,
    height,
    count,
    turns: turns === 'quarter',
  }));
  const strip = packStrip(boxes, box.width, { seed: 1, evaluations: limits.packings, maxNodes: 0 });
  return {
    sheets,
    bound,
    proved,
    byMaxRects: sheetsByMaxRects(spec),
    height: strip.height,
    byPotpack: box.height,
    ms,
  };
}
