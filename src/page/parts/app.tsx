import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { design, redo, swappedIn, undo } from '../state/design.ts';
import { status } from '../state/status.ts';
import { usePicked, useStore } from '../state/store.ts';
import { PaperDefs } from '../views/paper-defs.tsx';
import { useVoice } from '../words/use-voice.ts';
import { MadeForForm } from './contents-form.tsx';
import { CuttingForm } from './cutting-form.tsx';
import { Figures } from './figures.tsx';
import { FoldingForm } from './folding-form.tsx';
import { Header } from './header.tsx';
import { Keeping } from './keeping.tsx';
import { KnockoutsSlip } from './knockouts-slip.tsx';
import { Legend } from './legend.tsx';
import { Notes, Refusal } from './notes.tsx';
import { Numbers } from './numbers.tsx';
import { Outcome, useHeadline } from './outcome.tsx';
import { PaperForm } from './paper-form.tsx';
import { Shared } from './shared.tsx';
import { TakeAlong } from './take-along.tsx';
import { useShow } from './use-show.ts';

/** In a field, undoing is the field's own. */
const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLTextAreaElement || (target instanceof HTMLInputElement && target.type === 'text');

function onKey(event: KeyboardEvent): void {
  if (!(event.ctrlKey || event.metaKey) || event.altKey || isTyping(event.target)) return;
  const key = event.key.toLowerCase();
  const again = key === 'y' || (key === 'z' && event.shiftKey);
  if (key !== 'z' && !again) return;
  event.preventDefault();
  if (again) redo();
  else undo();
}

/** What was just done, said once. */
const Status = () => {
  const { text, count } = useStore(status, 'text', 'count');
  return (
    <p class="status" role="status">
      {text !== '' && <span key={count}>{text}</span>}
    </p>
  );
};

/** On a small screen, what became of it stays in sight. */
function Peek() {
  const { say } = useVoice();
  const show = useShow();
  const headline = useHeadline();
  const { answer } = useStore(design, 'answer');
  const closed = answer?.state === 'folded' ? answer.plan.closed : undefined;
  return (
    <p class="peek">
      <span>
        {closed ? say('outcome.short', { width: show(closed.width), height: show(closed.height) }) : headline}
      </span>
      <button type="button" onClick={() => document.getElementById('outcome')?.focus()}>
        {say(closed ? 'outcome.see' : 'outcome.seeMore')}
      </button>
    </p>
  );
}

/** Patterns of the sheet's faces, for every picture. */
const Paper = () => <PaperDefs swapped={usePicked(design, swappedIn)} />;

/** Where the folder lies: at rest once everything is told of the design. */
function Table({ children }: { readonly children: ComponentChildren }) {
  const { told, history } = useStore(design, 'told', 'history');
  return (
    <div class="table" data-at={told === history.now.spec ? 'rest' : 'work'}>
      {children}
    </div>
  );
}

/** All that is shown of the last folder that could be folded. */
function Folded() {
  const { folded, answer } = useStore(design, 'folded', 'answer');
  if (!folded) return null;
  const stale = answer?.state !== 'folded';
  return (
    <div class={stale ? 'stale' : undefined}>
      <Figures folded={folded} />
      <Legend folded={folded} />
      {!stale && <Notes folded={folded} />}
      <TakeAlong folded={folded} />
      <Numbers folded={folded} />
    </div>
  );
}

/** The whole page. */
export function App() {
  const { say } = useVoice();
  useEffect(() => {
    document.title = say('page.title');
  }, [say]);
  useEffect(() => {
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, []);
  return (
    <>
      <Paper />
      <Header />
      <main>
        <div class="wishes">
          <Shared />
          <MadeForForm />
          <PaperForm />
          <FoldingForm />
          <KnockoutsSlip />
          <CuttingForm />
          <Peek />
        </div>
        <Table>
          <Outcome />
          <Refusal />
          <Folded />
          <Keeping />
        </Table>
      </main>
      <footer>
        <p>
          <a href="docs">{say('page.api')}</a>
        </p>
      </footer>
      <Status />
    </>
  );
}
