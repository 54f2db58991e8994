import { useEffect, useRef, useState } from 'preact/hooks';
import { ask } from '../ask/ask.ts';
import type { Stage } from '../solid/stage.ts';
import { design, specNow, swappedIn } from '../state/design.ts';
import { tellStatus } from '../state/status.ts';
import { usePicked, useStore } from '../state/store.ts';
import { usePrint } from '../views/use-print.ts';
import { useVoice } from '../words/use-voice.ts';

interface SolidFoldProps {
  /** How many steps are done; between two, how far the next one is. */
  readonly at: number;
  readonly label: string;
  readonly onFail: () => void;
}

/** Degrees by which an arrow key turns the folder. */
const keyTurn = 8;

const keyTurns: Readonly<Record<string, readonly [across: number, down: number]>> = {
  ArrowLeft: [-keyTurn, 0],
  ArrowRight: [keyTurn, 0],
  ArrowUp: [0, -keyTurn],
  ArrowDown: [0, keyTurn],
};

/** The folder in space. What draws it is loaded when it is first asked for. */
export function SolidFold({ at, label, onFail }: SolidFoldProps) {
  const { say } = useVoice();
  const { folded } = useStore(design, 'folded');
  const swapped = usePicked(design, swappedIn);
  const print = usePrint();
  const canvas = useRef<HTMLCanvasElement>(null);
  const [stage, setStage] = useState<Stage>();

  useEffect(() => {
    let gone = false;
    let made: Stage | undefined;
    import('../solid/stage.ts')
      .then(({ openStage }) => {
        if (gone || !canvas.current) return;
        made = openStage(canvas.current);
        setStage(made);
      })
      .catch(() => {
        tellStatus(say('steps.solid.failed'));
        onFail();
      });
    return () => {
      gone = true;
      made?.close();
    };
  }, []);

  useEffect(() => {
    if (!stage || folded === undefined) return;
    ask('solid', specNow()).then(
      (solid) => stage.show(solid),
      () => undefined,
    );
  }, [stage, folded]);

  useEffect(() => {
    if (!stage || !folded) return;
    void stage.paper(folded.open, print.photos, swapped);
  }, [stage, folded, swapped, print]);

  useEffect(() => stage?.foldTo(at), [stage, at, folded]);

  return (
    <div class="solid">
      <canvas
        ref={canvas}
        tabIndex={0}
        role="img"
        aria-label={label}
        aria-describedby="solid-hint"
        onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
        onPointerMove={(event) => {
          if (event.currentTarget.hasPointerCapture(event.pointerId))
            stage?.turn(event.movementX / 2, event.movementY / 2);
        }}
        onKeyDown={(event) => {
          const turn = keyTurns[event.key];
          if (!turn) return;
          event.preventDefault();
          stage?.turn(...turn);
        }}
      />
      {!stage && <p class="hint">{say('steps.solid.loading')}</p>}
      <p class="hint" id="solid-hint">
        {say('steps.solid.hint')}
      </p>
    </div>
  );
}
