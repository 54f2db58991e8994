import { useEffect, useState } from 'preact/hooks';
import { sharedDesign } from '../api/kept.ts';
import { secretIn } from '../spec/address.ts';
import { isObject, type Spec } from '../spec/pointer.ts';
import { put } from '../state/design.ts';
import { useVoice } from '../words/use-voice.ts';

type Found = { readonly gone: true } | { readonly gone: false; readonly about: Spec };

/** Opens the design behind a shared link, and says whose it is. */
export function Shared() {
  const { say } = useVoice();
  const [found, setFound] = useState<Found>();
  useEffect(() => {
    const open = async () => {
      const secret = secretIn(location.hash);
      if (secret === undefined) return;
      const reply = await sharedDesign(secret);
      if (reply.kind !== 'done' || !isObject(reply.body) || !isObject(reply.body.spec)) {
        setFound({ gone: true });
        return;
      }
      setFound({ gone: false, about: reply.body });
      put({ spec: reply.body.spec, swapped: false });
    };
    void open();
    addEventListener('hashchange', open);
    return () => removeEventListener('hashchange', open);
  }, []);
  if (!found) return null;
  if (found.gone)
    return (
      <section class="slip" role="alert">
        <p>{say('keep.shared.gone')}</p>
      </section>
    );
  const { title, notes, credit, licence } = found.about;
  return (
    <section class="slip shared" aria-labelledby="shared-title">
      <h2 id="shared-title">{say('keep.shared.title')}</h2>
      <p>
        <b>{String(title ?? '')}</b>
      </p>
      {typeof notes === 'string' && <p class="notes">{notes}</p>}
      {typeof credit === 'string' && <p>{say('keep.shared.by', { credit })}</p>}
      {typeof licence === 'string' && <p>{say('keep.shared.licence', { licence })}</p>}
    </section>
  );
}
