import { useState } from 'preact/hooks';
import { design } from '../state/design.ts';
import { useStore } from '../state/store.ts';
import { useVoice } from '../words/use-voice.ts';
import { Later } from './later.ts';

const loadForm = () => import('./knockouts-form.tsx').then(({ KnockoutsForm }) => KnockoutsForm);

/** What is cut out of the finished folder: its form is loaded for those who cut something out. */
export function KnockoutsSlip() {
  const { say } = useVoice();
  const { spec } = useStore(design, 'history').history.now;
  const [wanted, setWanted] = useState(false);
  const has = Array.isArray(spec.knockouts) && spec.knockouts.length > 0;
  return (
    <section class="slip" aria-labelledby="cutout-title">
      <h2 id="cutout-title">{say('cutout.title')}</h2>
      {has || wanted ? (
        <Later load={loadForm} props={{}} loading={say('cutout.loading')} failed={say('cutout.failed')} />
      ) : (
        <p class="buttons">
          <button type="button" onClick={() => setWanted(true)}>
            {say('cutout.open')}
          </button>
        </p>
      )}
    </section>
  );
}
