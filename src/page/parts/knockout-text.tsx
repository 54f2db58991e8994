import { useState } from 'preact/hooks';
import { isObject, type Json } from '../spec/pointer.ts';
import { change } from '../state/design.ts';
import { useVoice } from '../words/use-voice.ts';
import { fieldId } from './field-id.ts';
import { More } from './more.tsx';

function readObject(text: string): Json | undefined {
  try {
    const value = JSON.parse(text) as Json;
    return isObject(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

/** A knockout as the spec holds it, for everything that has no field of its own. */
export function KnockoutText({ knockout, path }: { readonly knockout: Json; readonly path: string }) {
  const { say } = useVoice();
  const [typed, setTyped] = useState<string>();
  const id = fieldId(`${path}/as-text`);
  const isWrong = typed !== undefined && readObject(typed) === undefined;
  return (
    <More title={say('cutout.asText')}>
      <div class="field">
        <label for={id}>{say('cutout.asText.label')}</label>
        <textarea
          id={id}
          class="code"
          rows={8}
          spellcheck={false}
          aria-describedby={isWrong ? `${id}-hint ${id}-fault` : `${id}-hint`}
          aria-invalid={isWrong ? true : undefined}
          value={typed ?? JSON.stringify(knockout, null, 2)}
          onInput={({ currentTarget: { value } }) => {
            setTyped(value);
            const read = readObject(value);
            if (read !== undefined) change(path, read, `${path} as text`);
          }}
          onBlur={() => !isWrong && setTyped(undefined)}
        />
        <p class="hint" id={`${id}-hint`}>
          {say('cutout.asText.hint')} <a href="docs">{say('page.api')}</a>
        </p>
        {isWrong && (
          <p class="fault" id={`${id}-fault`}>
            {say('cutout.asText.wrong')}
          </p>
        )}
      </div>
    </More>
  );
}
