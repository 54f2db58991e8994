import { useState } from 'preact/hooks';
import { change } from '../state/design.ts';
import { useVoice } from '../words/use-voice.ts';
import { Field, type FieldProps } from './field.tsx';
import { mostBytes } from './file-reading.ts';

interface FileProps extends FieldProps {
  readonly accept: string;
  /** What the spec holds of a file. */
  readonly read: (file: Blob) => Promise<string>;
}

/** A member of the spec that is taken from a file. */
export function FileField({ path, label, hint, accept, read }: FileProps) {
  const { say } = useVoice();
  const [isTooLarge, setIsTooLarge] = useState(false);
  const take = async (file: File | undefined) => {
    if (!file) return;
    setIsTooLarge(file.size > mostBytes);
    if (file.size <= mostBytes) change(path, await read(file));
  };
  return (
    <Field
      path={path}
      label={label}
      hint={hint}
      after={
        isTooLarge && (
          <p class="fault" role="alert">
            {say('cutout.file.tooLarge', { most: mostBytes / 1024 })}
          </p>
        )
      }
    >
      {(wiring) => (
        <input
          {...wiring}
          type="file"
          accept={accept}
          onChange={({ currentTarget }) => void take(currentTarget.files?.[0])}
        />
      )}
    </Field>
  );
}
