import type { Answer } from '../ask/answer.ts';
import { examples } from '../spec/examples.ts';
import { design, put } from '../state/design.ts';
import { useStore } from '../state/store.ts';
import { useVoice, type Voice } from '../words/use-voice.ts';
import { useShow } from './use-show.ts';
import { Wrongs } from './wrongs.tsx';

function headline(answer: Answer | undefined, voice: Voice, show: ReturnType<typeof useShow>): string {
  const { say, sayCount, tell } = voice;
  switch (answer?.state) {
    case 'folded': {
      const { closed, sheet, contents, warnings } = answer.plan;
      const notes =
        warnings.filter(({ code }) => code !== 'print-not-upright').length +
        (answer.askew.length > 0 ? 1 : 0);
      const forbidden = answer.forbids.length > 0;
      return [
        say('outcome.folded', {
          width: show(closed.width),
          height: show(closed.height),
          thickness: show(closed.thickness).replace(/≈\s/u, ''),
          sheet: tell(sheet.title).text,
        }),
        ...(contents
          ? [
              say(answer.pockets.length === 1 ? 'outcome.holdsAll' : 'outcome.holds', {
                count: contents.perPocket,
              }),
            ]
          : []),
        forbidden
          ? `${say('cutout.forbidden')}.`
          : notes === 0
            ? say('outcome.notes.none')
            : sayCount('outcome.notes', notes),
      ].join(' ');
    }
    case 'refused':
      return say('outcome.refused');
    case 'unreadable':
      return say('outcome.unreadable');
    case 'empty':
      return say('outcome.empty');
    default:
      return say('page.loading');
  }
}

/** In a few words what became of the wish. */
export function useHeadline(): string {
  const voice = useVoice();
  const show = useShow();
  const { answer, failed } = useStore(design, 'answer', 'failed');
  return failed ? voice.say('page.failed') : headline(answer, voice, show);
}

/** What became of the wish; screen readers are told when it changes. */
export function Outcome() {
  const { say } = useVoice();
  const { answer, folded, settled } = useStore(design, 'answer', 'folded', 'settled');
  const words = useHeadline();
  const isForbidden = answer?.state === 'folded' && answer.forbids.length > 0;
  const stale = folded !== undefined && answer?.state !== 'folded';
  return (
    <section
      id="outcome"
      class={`outcome outcome-${isForbidden ? 'forbidden' : (answer?.state ?? 'none')}`}
      aria-labelledby="outcome-title"
      tabIndex={-1}
    >
      <h2 id="outcome-title">{say('outcome.title')}</h2>
      <p class="headline">
        {words} {stale && say('outcome.stale')}
      </p>
      <p class="unseen" role="status">
        {settled ? words : ''}
      </p>
      <Wrongs />
      {answer?.state === 'empty' && (
        <>
          <p>{say('outcome.empty.how')}</p>
          <p>{say('outcome.empty.hint')}</p>
          <p class="buttons">
            {examples.map(({ name, spec }) => (
              <button key={name} type="button" onClick={() => put({ spec, swapped: false })}>
                {say(name)}
              </button>
            ))}
          </p>
        </>
      )}
    </section>
  );
}
