import { useRef } from 'preact/hooks';
import { NM_PER_MM } from '../../../shared/lengths/nanometres.ts';
import { nmPerUnit, parseLength, toNanometres } from '../../../shared/lengths/parse-length.ts';
import { inMm, writeLength } from '../../../shared/lengths/show-length.ts';
import type { Grip } from '../ask/answer.ts';
import { type OffsetAxis, offsetPath, offsetText, withOffset } from '../spec/knockouts.ts';
import { type Json, valueAt } from '../spec/pointer.ts';
import { change, design, specNow } from '../state/design.ts';
import { useStore } from '../state/store.ts';
import { useVoice } from '../words/use-voice.ts';

/** How a picture's millimetres lie on the screen. */
export interface Frame {
  /** Pixels for a millimetre of the picture. */
  readonly scale: number;
  /** Millimetres of the picture for a real one. */
  readonly ratio: number;
  /** Pixels from the frame's corner to the picture's own zero. */
  readonly left: number;
  readonly top: number;
}

interface GripsProps {
  readonly grips: readonly Grip[];
  readonly frame: Frame;
}

/** WCAG 2.2, success criterion 2.5.8: pixels. */
const leastTarget = 24;

const isInch = (): boolean => specNow().units === 'in';

/** What something is moved by at least, in nanometres. */
const stepNow = (): number => (isInch() ? nmPerUnit.in / 16 : NM_PER_MM);

/** An offset that a spec holds along an axis, in millimetres. */
function offsetIn(offset: Json | undefined, axis: OffsetAxis): number {
  const text = offsetText(offset, axis);
  const parsed = parseLength(text.replace(/^-/u, ''));
  if (!parsed.ok) return 0;
  const nm = toNanometres(parsed.value, isInch() ? 'in' : 'mm');
  return (text.startsWith('-') ? -1 : 1) * (nm.ok ? inMm(nm.value) : 0);
}

const written = (mm: number): string => {
  const step = stepNow();
  const nm = Math.round((mm * NM_PER_MM) / step) * step;
  if (nm === 0) return '';
  return `${nm < 0 ? '-' : ''}${writeLength(Math.abs(nm), isInch() ? 'inch' : 'metric')}`;
};

/** Moves a knockout to an offset in millimetres, right and down as the reader sees it. */
function moveTo(index: number, right: number, down: number): void {
  const own = valueAt(specNow(), `/knockouts/${index}`);
  const path = offsetPath(own);
  if (path === undefined) return;
  const pointer = `/knockouts/${index}${path}`;
  const across = withOffset(valueAt(own, path), 'right', written(right));
  change(pointer, withOffset(across, 'down', written(down)), pointer);
}

function offsetNow(index: number): readonly [right: number, down: number] {
  const own = valueAt(specNow(), `/knockouts/${index}`);
  const offset = valueAt(own, offsetPath(own) ?? '/none');
  return [offsetIn(offset, 'right'), offsetIn(offset, 'down')];
}

const arrows: Readonly<Record<string, readonly [across: number, down: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

function GripButton({ grip, frame }: { readonly grip: Grip; readonly frame: Frame }) {
  const { say, tell } = useVoice();
  const from = useRef({ x: 0, y: 0, right: 0, down: 0 });
  const { index, title } = grip;
  const { scale, ratio, left, top } = frame;
  const [width, height] = [grip.width, grip.height].map((side) => Math.max(leastTarget, side * scale));
  const [x, y] = [left + (grip.x + grip.width / 2) * scale, top + (grip.y + grip.height / 2) * scale];
  const real = scale * ratio;
  return (
    <button
      type="button"
      class="grip"
      aria-label={say('cutout.move', { title: tell(title).text })}
      style={{
        left: `${x - (width ?? 0) / 2}px`,
        top: `${y - (height ?? 0) / 2}px`,
        width: `${width}px`,
        height: `${height}px`,
      }}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        const [right, down] = offsetNow(index);
        from.current = { x: event.clientX, y: event.clientY, right, down };
      }}
      onPointerMove={(event) => {
        if (!event.currentTarget.hasPointerCapture(event.pointerId)) return;
        const start = from.current;
        moveTo(
          index,
          start.right + (event.clientX - start.x) / real,
          start.down + (event.clientY - start.y) / real,
        );
      }}
      onKeyDown={(event) => {
        const arrow = arrows[event.key];
        if (!arrow) return;
        event.preventDefault();
        const step = (stepNow() / NM_PER_MM) * (event.shiftKey ? 10 : 1);
        const [right, down] = offsetNow(index);
        moveTo(index, right + arrow[0] * step, down + arrow[1] * step);
      }}
    />
  );
}

/** Knockouts to be taken hold of, over the picture that shows them squarely. */
export function Grips({ grips, frame }: GripsProps) {
  const knockouts = valueAt(useStore(design, 'history').history.now.spec, '/knockouts');
  return (
    <>
      {grips
        .filter(({ index }) => offsetPath(valueAt(knockouts, `/${index}`)) !== undefined)
        .map((grip) => (
          <GripButton key={grip.index} grip={grip} frame={frame} />
        ))}
    </>
  );
}
