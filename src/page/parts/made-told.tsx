import { useVoice } from '../words/use-voice.ts';

interface MadeToldProps {
  readonly busy: boolean;
  /** Why nothing was made; empty where nothing is wrong. */
  readonly trouble: string;
}

/** How far the service is with a file. */
export function MadeTold({ busy, trouble }: MadeToldProps) {
  const { say } = useVoice();
  return (
    <>
      <p class="hint" role="status">
        {busy && say('made.busy')}
      </p>
      {trouble !== '' && (
        <p class="fault" role="alert">
          {trouble}
        </p>
      )}
    </>
  );
}
