import { useState } from 'preact/hooks';
import { requestFile } from '../api/client.ts';
import type { Json } from '../spec/pointer.ts';
import { tellStatus } from '../state/status.ts';
import { useVoice } from '../words/use-voice.ts';
import { downloadFile } from './download.ts';

/** Has the service make files, one at a time. */
export function useMade() {
  const { say } = useVoice();
  const [trouble, setTrouble] = useState('');
  const [busy, setBusy] = useState(false);

  const make = async (name: string, path: string, body: Json): Promise<void> => {
    setBusy(true);
    setTrouble('');
    const reply = await requestFile(path, body);
    setBusy(false);
    if (reply.kind === 'done') {
      downloadFile(name, reply.file);
      tellStatus(say('take.saved', { name }));
    } else if (reply.kind === 'refused') setTrouble(say('made.refused', { reason: reply.detail }));
    else setTrouble(say(reply.kind === 'offline' ? 'made.offline' : 'made.signedOut'));
  };
  return { make, busy, trouble, setTrouble };
}
