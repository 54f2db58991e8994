import type { ComponentChildren } from 'preact';
import { useVoice } from '../words/use-voice.ts';
import { fieldId } from './field-id.ts';

/** The field of a path, or the nearest one around it. */
function fieldFor(path: string): HTMLElement | undefined {
  for (let pointer = path; pointer !== ''; pointer = pointer.replace(/\/[^/]*$/u, '')) {
    const field = document.getElementById(fieldId(pointer));
    if (field) return field;
  }
  return undefined;
}

function goTo(field: HTMLElement): void {
  for (let around = field.parentElement; around; around = around.parentElement)
    if (around instanceof HTMLDetailsElement) around.open = true;
  field.scrollIntoView({ block: 'center' });
  field.focus();
}

interface ChangeItProps {
  /** JSON Pointer into the spec. */
  readonly path: string;
  /** What is to be changed, for who hears the button alone. */
  readonly about: string;
  /** Shown where there is no such field; default nothing. */
  readonly otherwise?: ComponentChildren;
}

/** Goes to the field of a member of the spec, where there is one. */
export function ChangeIt({ path, about, otherwise }: ChangeItProps) {
  const { say } = useVoice();
  if (!fieldFor(path)) return <>{otherwise}</>;
  return (
    <button
      type="button"
      class="quiet"
      aria-label={`${say('notes.change')}: ${about}`}
      onClick={() => {
        const field = fieldFor(path);
        if (field) goTo(field);
      }}
    >
      {say('notes.change')}
    </button>
  );
}
