import type { FoldedAnswer, Proposal } from '../ask/answer.ts';
import { design, take } from '../state/design.ts';
import { tellStatus } from '../state/status.ts';
import { useStore } from '../state/store.ts';
import { isWordName } from '../words/say.ts';
import { useVoice } from '../words/use-voice.ts';
import { ChangeIt } from './change-it.tsx';
import { Told } from './told.tsx';
import { useShow } from './use-show.ts';

/** Changes that were tried and work, each to be taken with one press. */
function Proposals({ proposals }: { readonly proposals: readonly Proposal[] }) {
  const { say, tell } = useVoice();
  const show = useShow();
  return (
    <ul class="proposals">
      {proposals.map(({ message, changes, gives }) => {
        const told = tell(message);
        return (
          <li key={message}>
            <span>
              <b>
                <Told told={told} begins />
              </b>
              <br />
              <small>
                {say('notes.gives', {
                  width: show(gives.closed.width),
                  height: show(gives.closed.height),
                  sheet: tell(gives.sheet).text,
                })}
              </small>
            </span>
            <button
              type="button"
              aria-label={`${say('notes.take')}: ${told.text}`}
              onClick={() => {
                take(changes);
                tellStatus(say('notes.taken', { change: told.text }));
              }}
            >
              {say('notes.take')}
            </button>
          </li>
        );
      })}
    </ul>
  );
}

/** Why nothing can be folded, and what would help. */
export function Refusal() {
  const { say, tell } = useVoice();
  const { answer, further, settled } = useStore(design, 'answer', 'further', 'settled');
  if (answer?.state !== 'refused') return null;
  const hasRemedies = answer.faults.some(({ remedy }) => remedy !== undefined);
  return (
    <section class="card refusal" aria-labelledby="why-not">
      <h2 id="why-not">{say('notes.why')}</h2>
      <ul>
        {answer.faults.map(({ path, message, remedy }) => (
          <li key={message}>
            <Told told={tell(message)} begins />.{' '}
            {remedy && say('notes.remedy', { remedy: tell(remedy).text })}{' '}
            <ChangeIt path={path} about={tell(message).text} />
          </li>
        ))}
      </ul>
      {settled && further && (further.proposals.length > 0 || !hasRemedies) && (
        <>
          <h3>{say('notes.remedies')}</h3>
          {further.proposals.length === 0 ? (
            <p>{say('notes.remedies.none')}</p>
          ) : (
            <Proposals proposals={further.proposals} />
          )}
        </>
      )}
    </section>
  );
}

/** Where a print with an up and a down does not stand upright. */
function PrintNotes({ askew }: { readonly askew: FoldedAnswer['askew'] }) {
  const { say, tell, language } = useVoice();
  if (askew.length === 0) return null;
  const list = new Intl.ListFormat(language);
  return (
    <li>
      {say('notes.print')}
      <ul>
        {askew.map(({ view, way, parts }) => {
          const name = `notes.view.${view}`;
          return (
            <li key={`${view} ${way}`}>
              {say(`notes.print.${way}`, {
                view: isWordName(name) ? say(name) : tell(view).text,
                parts: list.format(parts.map((part) => tell(part).text)),
              })}
            </li>
          );
        })}
      </ul>
      {say('notes.print.remedy')}
    </li>
  );
}

/** The number that a finding about knockouts has in the pictures. */
export function NumberOf({ message, folded }: { readonly message: string; readonly folded: FoldedAnswer }) {
  const found = folded.plan.knockouts?.findings.find((finding) => finding.message === message);
  return found ? <span class="number">{found.number}</span> : null;
}

/** Told by the page itself, in fewer words. */
const toldApart = 'print-not-upright';

/** What to know before cutting, and other ways that work. */
export function Notes({ folded }: { readonly folded: FoldedAnswer }) {
  const { say, tell } = useVoice();
  const { further } = useStore(design, 'further');
  const warnings = folded.plan.warnings.filter(({ code }) => code !== toldApart);
  return (
    <section class="card" aria-labelledby="notes-title">
      <h2 id="notes-title">{say('notes.title')}</h2>
      {warnings.length === 0 && folded.askew.length === 0 && <p>{say('notes.none')}</p>}
      <ul class="warnings">
        {warnings.map(({ code, path, message, remedy }) => (
          <li key={`${code}${message}`}>
            <NumberOf message={message} folded={folded} />
            <Told told={tell(message)} begins />
            {'. '}
            {remedy && say('notes.remedy', { remedy: tell(remedy).text })}{' '}
            <ChangeIt path={path} about={tell(message).text} />
          </li>
        ))}
        <PrintNotes askew={folded.askew} />
      </ul>
      {further && further.proposals.length > 0 && (
        <>
          <h3>{say('notes.alternatives')}</h3>
          <Proposals proposals={further.proposals} />
        </>
      )}
      <details class="more" open>
        <summary>{say('notes.cautions')}</summary>
        <ul class="more-inside">
          {folded.plan.cautions.map((caution) => (
            <li key={caution}>
              <Told told={tell(caution)} />
            </li>
          ))}
        </ul>
      </details>
    </section>
  );
}
