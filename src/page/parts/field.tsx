import type { ComponentChildren, JSX } from 'preact';
import type { Fault } from '../ask/answer.ts';
import { design } from '../state/design.ts';
import { usePicked } from '../state/store.ts';
import { useVoice } from '../words/use-voice.ts';
import { fieldId } from './field-id.ts';
import { Told } from './told.tsx';

/** What is wrong with one member of the spec, once its writer has paused. */
export function useFaults(path: string): readonly Fault[] {
  const faults = usePicked(design, ({ answer, settled }) =>
    settled && answer?.state === 'unreadable' ? answer.faults : undefined,
  );
  return faults?.filter((fault) => fault.path === path) ?? [];
}

export interface FieldProps {
  /** JSON Pointer of the member that it fills in. */
  readonly path: string;
  readonly label: string;
  readonly hint?: string | undefined;
}

interface Wiring {
  readonly id: string;
  readonly 'aria-describedby'?: string;
  readonly 'aria-invalid'?: true;
}

interface FrameProps extends FieldProps {
  readonly children: (wiring: Wiring) => JSX.Element;
  readonly after?: ComponentChildren;
}

/** A labelled control with its hint, and with what is wrong with it. */
export function Field({ path, label, hint, children, after }: FrameProps) {
  const { tell } = useVoice();
  const faults = useFaults(path);
  const id = fieldId(path);
  const described = [hint && `${id}-hint`, faults.length > 0 && `${id}-fault`].filter(Boolean).join(' ');
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {children({
        id,
        ...(described === '' ? {} : { 'aria-describedby': described }),
        ...(faults.length > 0 ? { 'aria-invalid': true } : {}),
      })}
      {after}
      {hint && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {faults.length > 0 && (
        <p class="fault" id={`${id}-fault`}>
          {faults.map(({ message, remedy }) => (
            <span key={message}>
              <Told told={tell(message)} begins />
              {remedy && (
                <>
                  {': '}
                  <Told told={tell(remedy)} />
                </>
              )}
              .{' '}
            </span>
          ))}
        </p>
      )}
    </div>
  );
}
