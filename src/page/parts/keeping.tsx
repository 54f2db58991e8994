import { useState } from 'preact/hooks';
import type { Kept } from '../api/kept.ts';
import { isObject } from '../spec/pointer.ts';
import { design, leaveOnTable, put } from '../state/design.ts';
import { keptThings, loadKept } from '../state/kept.ts';
import { tellStatus } from '../state/status.ts';
import { usePicked, useStore } from '../state/store.ts';
import { useVoice } from '../words/use-voice.ts';
import { KeepDesign } from './keep-design.tsx';
import { KeptDesign } from './kept-design.tsx';

/** Who is signed in, or what has to happen before anything can be kept. */
function Reach() {
  const { say } = useVoice();
  const { reach, member } = useStore(keptThings, 'reach', 'member');
  if (reach === 'offline')
    return (
      <>
        <p>{say('keep.offline')}</p>
        <p class="buttons">
          <button type="button" onClick={() => void loadKept()}>
            {say('keep.again')}
          </button>
        </p>
      </>
    );
  if (reach === 'signed-out')
    return (
      <p>
        {say('keep.signedOut')}{' '}
        <a href="sign-in" onClick={leaveOnTable}>
          {say('keep.signIn')}
        </a>
      </p>
    );
  if (reach === 'ready' && member !== undefined)
    return (
      <form class="signed-in" method="post" action="sign-out" onSubmit={leaveOnTable}>
        <span>{say('keep.signedIn', { name: member })}</span>{' '}
        <button type="submit" class="quiet">
          {say('keep.signOut')}
        </button>
      </form>
    );
  return null;
}

/** Keeps designs with the service, opens them again and shares them. */
export function Keeping() {
  const { say } = useVoice();
  const { reach, kept } = useStore(keptThings, 'reach', 'kept');
  const isEmpty = usePicked(design, ({ answer }) => answer?.state === 'empty');
  const [opened, setOpened] = useState<Kept>();
  const open = (each: Kept) => {
    const spec = isObject(each.value) ? each.value.spec : undefined;
    if (!isObject(spec)) return;
    setOpened(each);
    put({ spec, swapped: false });
    tellStatus(say('keep.opened', { name: each.name }));
  };
  return (
    <section class="card keeping" aria-labelledby="keep-title">
      <h2 id="keep-title">{say('keep.title')}</h2>
      <Reach />
      {reach === 'ready' && (
        <>
          {!isEmpty && <KeepDesign key={opened?.name} from={opened} />}
          <h3>{say('keep.designs')}</h3>
          {kept.designs.length === 0 ? (
            <p class="hint">{say('keep.designs.none')}</p>
          ) : (
            <ul class="designs">
              {kept.designs.map((each) => (
                <KeptDesign key={each.name} kept={each} onOpen={open} />
              ))}
            </ul>
          )}
        </>
      )}
    </section>
  );
}
