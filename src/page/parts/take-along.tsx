import { useState } from 'preact/hooks';
import type { FoldedAnswer } from '../ask/answer.ts';
import { ask } from '../ask/ask.ts';
import { toFragment } from '../spec/address.ts';
import { design, specNow } from '../state/design.ts';
import { tellStatus } from '../state/status.ts';
import { usePicked } from '../state/store.ts';
import { useVoice } from '../words/use-voice.ts';
import { download } from './download.ts';
import { Later } from './later.ts';
import { More } from './more.tsx';
import { NumberOf } from './notes.tsx';
import { begun, Told } from './told.tsx';

const loadFromService = () => import('./from-service.tsx').then(({ FromService }) => FromService);

declare const __HEMFOLD_VERSION__: string;

/** Files, paper and the address. */
export function TakeAlong({ folded }: { readonly folded: FoldedAnswer }) {
  const { say, tell } = useVoice();
  const [opened, setOpened] = useState(false);
  const ready = usePicked(design, ({ answer }) => answer?.state === 'folded');
  const file = `${folded.plan.style}-folder`;
  const save = async (name: string, type: string, made: Promise<string>) => {
    download(name, type, await made);
    tellStatus(say('take.saved', { name }));
  };
  const drawing = () => save(`${file}.svg`, 'image/svg+xml', ask('drawing', specNow()));
  const piece = (name: string) => save(`${name}.svg`, 'image/svg+xml', ask('piece', specNow(), name));
  const foldModel = () =>
    save(
      `${file}.fold`,
      'application/json',
      ask('foldFile', specNow(), `hemfold ${__HEMFOLD_VERSION__}`).then((model) => JSON.stringify(model)),
    );
  const copy = async () => {
    const address = new URL(toFragment(design.get().history.now), location.href).href;
    try {
      await navigator.clipboard.writeText(address);
      tellStatus(say('take.link.copied'));
    } catch {
      tellStatus(say('take.link.failed'));
    }
  };
  return (
    <section class="card take" aria-labelledby="take-title">
      <h2 id="take-title">{say('take.title')}</h2>
      {folded.forbids.length > 0 && (
        <div class="fault">
          <p>{say('cutout.forbidden')}:</p>
          <ul>
            {folded.forbids.map(({ message }) => (
              <li key={message}>
                <NumberOf message={message} folded={folded} />
                <Told told={tell(message)} begins />
              </li>
            ))}
          </ul>
        </div>
      )}
      {ready && folded.forbids.length === 0 ? (
        <p class="buttons">
          <button type="button" class="main" onClick={drawing}>
            {say('take.svg')}
          </button>
          {folded.plan.knockouts?.pieces.map(({ name, title }) => (
            <button key={name} type="button" onClick={() => piece(name)}>
              {say('take.piece', { title: begun(tell(title).text) })}
            </button>
          ))}
          <button type="button" onClick={foldModel}>
            {say('take.fold')}
          </button>
          <button type="button" onClick={() => print()}>
            {say('take.print')}
          </button>
          <button type="button" onClick={copy}>
            {say('take.link')}
          </button>
        </p>
      ) : (
        !ready && <p>{say('take.nothing')}</p>
      )}
      {ready && folded.forbids.length === 0 && (
        <More title={say('made.title')} onOpen={() => setOpened(true)}>
          {opened && (
            <Later
              load={loadFromService}
              props={{ folded }}
              loading={say('made.loading')}
              failed={say('made.offline')}
            />
          )}
        </More>
      )}
      <p class="hint">{say('take.safety')}</p>
      <p class="hint">{say('take.link.hint')}</p>
    </section>
  );
}
