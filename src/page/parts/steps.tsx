import { useEffect, useState } from 'preact/hooks';
import { design } from '../state/design.ts';
import { useStore } from '../state/store.ts';
import { SightView } from '../views/sight-view.tsx';
import { usePrint } from '../views/use-print.ts';
import { useVoice } from '../words/use-voice.ts';
import { Later } from './later.ts';
import { Told } from './told.tsx';

const loadSolidFold = () => import('./solid-fold.tsx').then(({ SolidFold }) => SolidFold);

const tallest = 340;
/** Milliseconds that one step takes by itself. */
const stepMs = 1400;

const wantsStill = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches;

/** Moves on by itself until the last step. */
function usePlay(at: number, count: number, move: (to: number) => void) {
  const [playing, setPlaying] = useState(false);
  useEffect(() => {
    if (!playing) return undefined;
    if (at >= count) {
      setPlaying(false);
      return undefined;
    }
    if (wantsStill()) {
      const timer = setTimeout(() => move(Math.min(count, Math.floor(at) + 1)), stepMs);
      return () => clearTimeout(timer);
    }
    const frame = requestAnimationFrame(() => move(Math.min(count, at + 1000 / 60 / stepMs)));
    return () => cancelAnimationFrame(frame);
  }, [playing, at, count, move]);
  return { playing, setPlaying };
}

/** The folding, step by step: flat pictures at once, and in space on demand. */
export function Steps() {
  const { say, tell } = useVoice();
  const { further } = useStore(design, 'further');
  const print = usePrint();
  const [at, setAt] = useState(0);
  const [inSpace, setInSpace] = useState(false);
  const steps = further?.steps ?? [];
  const [known, setKnown] = useState(steps);
  if (steps.length > 0 && steps !== known) setKnown(steps);
  const shown = steps.length > 0 ? steps : known;
  const count = shown.length;
  const { playing, setPlaying } = usePlay(at, count, setAt);
  if (count === 0) return null;
  const now = Math.min(at, count);
  const number = Math.min(count, Math.floor(now) + (now >= count ? 0 : 1));
  const step = shown[number - 1];
  const words = now === 0 && inSpace ? undefined : step?.words;
  const title = say('steps.step', { number, count });
  return (
    <section class="card steps" aria-labelledby="steps-title">
      <h2 id="steps-title">{say('steps.title')}</h2>
      {inSpace ? (
        <Later
          load={loadSolidFold}
          props={{
            at: now,
            label: say('steps.solid.about', { number, count }),
            onFail: () => setInSpace(false),
          }}
          loading={say('steps.solid.loading')}
          failed={say('steps.solid.failed')}
        />
      ) : (
        step && <SightView sight={step.sight} tell={tell} print={print} tallest={tallest} labelled={false} />
      )}
      <div class="step-controls">
        <p class="step-words">
          <b>{title}</b> {words ? <Told told={tell(words)} /> : say('steps.start')}
        </p>
        <label class="slider">
          <span>{say('steps.slider')}</span>
          <input
            type="range"
            min={0}
            max={count}
            step={inSpace ? 0.05 : 1}
            value={now}
            aria-valuetext={title}
            onInput={({ currentTarget }) => {
              setPlaying(false);
              setAt(Number(currentTarget.value));
            }}
          />
        </label>
        <p class="buttons">
          <button type="button" disabled={now <= 0} onClick={() => setAt(Math.max(0, Math.ceil(now) - 1))}>
            {say('steps.back')}
          </button>
          <button
            type="button"
            disabled={now >= count}
            onClick={() => setAt(Math.min(count, Math.floor(now) + 1))}
          >
            {say('steps.next')}
          </button>
          <button type="button" onClick={() => setInSpace(!inSpace)}>
            {say(inSpace ? 'steps.flat' : 'steps.solid')}
          </button>
          {inSpace && (
            <button
              type="button"
              onClick={() => {
                if (now >= count) setAt(0);
                setPlaying(!playing);
              }}
            >
              {say(playing ? 'steps.stop' : 'steps.play')}
            </button>
          )}
        </p>
      </div>
    </section>
  );
}
