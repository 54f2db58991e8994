import type { ComponentChildren } from 'preact';
import { useMemo, useRef, useState } from 'preact/hooks';
import type { FoldedAnswer, Grip, SightName } from '../ask/answer.ts';
import { design, unitsIn } from '../state/design.ts';
import { usePicked } from '../state/store.ts';
import { OpenSheetView } from '../views/open-sheet-view.tsx';
import { SightView } from '../views/sight-view.tsx';
import { usePrint } from '../views/use-print.ts';
import { useVoice, type Voice } from '../words/use-voice.ts';
import { Steps } from './steps.tsx';

/** What becomes of the sheet stands beside it. */
const finished = ['half-open', 'closed'] as const satisfies readonly SightName[];
const flat = ['outside', 'inside'] as const satisfies readonly SightName[];

/** Heights in pixels: on the table, and in a window of its own. */
const onTable = 300;
const besideSheet = 225;
const sheetOnTable = 540;
/** All of it is to be seen without scrolling, unless the window is a small one. */
const alone = (): number => Math.max(400, innerHeight - 160);

interface PrintProps {
  readonly name: string;
  readonly caption: string;
  readonly voice: Voice;
  readonly children: ComponentChildren;
  readonly large: () => ComponentChildren;
}

/** A picture with its caption, and with the same one as large as the window on demand. */
function Print({ name, caption, voice: { say }, children, large }: PrintProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const [isLarge, setIsLarge] = useState(false);
  return (
    <figure class={`print print-${name}`}>
      {children}
      <figcaption>
        {caption}
        <button
          type="button"
          class="quiet"
          aria-label={say('picture.largerOf', { picture: caption })}
          onClick={() => {
            setIsLarge(true);
            dialog.current?.showModal();
          }}
        >
          {say('picture.larger')}
        </button>
      </figcaption>
      <dialog ref={dialog} aria-label={caption} class="large" onClose={() => setIsLarge(false)}>
        <form method="dialog">
          <button type="submit">{say('page.closeDialog')}</button>
        </form>
        <section
          class="scroll"
          aria-label={caption}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, also for who has no pointer
          tabIndex={0}
        >
          <div class="at-least">{isLarge && large()}</div>
        </section>
      </dialog>
    </figure>
  );
}

/** Everything there is to see at once. */
export function Figures({ folded }: { readonly folded: FoldedAnswer }) {
  const voice = useVoice();
  const { say, tell } = voice;
  const units = usePicked(design, unitsIn);
  const print = usePrint();
  const gripsOn = useMemo<Partial<Record<SightName, readonly Grip[]>>>(
    () => Object.groupBy(folded.grips, ({ side }) => side),
    [folded],
  );
  const sheet = (tallest: number) => (
    <OpenSheetView
      folded={folded}
      voice={voice}
      inches={units === 'in'}
      tallest={tallest}
      photo={print.photos.inside}
    />
  );
  const seen = (name: SightName, tallest: number) => (
    <Print
      key={name}
      name={name}
      caption={say(`picture.${name}`)}
      voice={voice}
      large={() => <SightView sight={folded.sights[name]} tell={tell} print={print} tallest={alone()} />}
    >
      <SightView
        sight={folded.sights[name]}
        tell={tell}
        print={print}
        tallest={tallest}
        grips={gripsOn[name]}
      />
    </Print>
  );
  return (
    <div class="prints">
      <Print name="open" caption={say('picture.open')} voice={voice} large={() => sheet(alone())}>
        {sheet(sheetOnTable)}
      </Print>
      {finished.map((name) => seen(name, besideSheet))}
      {flat.map((name) => seen(name, onTable))}
      <Steps />
    </div>
  );
}
