import { change, design } from '../state/design.ts';
import { useStore } from '../state/store.ts';
import { useVoice } from '../words/use-voice.ts';
import { ChangeIt } from './change-it.tsx';
import { Told } from './told.tsx';

/** Leaves out of the spec what the page has no field for. */
function LeaveOut({ path }: { readonly path: string }) {
  const { say } = useVoice();
  return (
    <>
      <code>{path}</code>{' '}
      {path !== '' && (
        <button
          type="button"
          class="quiet"
          aria-label={`${say('cutout.remove')}: ${path}`}
          onClick={() => change(path, undefined)}
        >
          {say('cutout.remove')}
        </button>
      )}
    </>
  );
}

/** All that could not be read, each with the way to its field, once its writer has paused. */
export function Wrongs() {
  const { tell } = useVoice();
  const { answer, settled } = useStore(design, 'answer', 'settled');
  if (answer?.state !== 'unreadable' || !settled) return null;
  return (
    <ul class="wrongs">
      {answer.faults.map(({ path, message, remedy }) => (
        <li key={`${path} ${message}`}>
          <Told told={tell(message)} begins />
          {remedy && (
            <>
              {': '}
              <Told told={tell(remedy)} />
            </>
          )}
          . <ChangeIt path={path} about={tell(message).text} otherwise={<LeaveOut path={path} />} />
        </li>
      ))}
    </ul>
  );
}
