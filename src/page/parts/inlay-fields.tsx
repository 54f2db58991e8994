import { lengthToBegin } from '../spec/knockouts.ts';
import { isObject, type Json, valueAt } from '../spec/pointer.ts';
import { change } from '../state/design.ts';
import { useVoice } from '../words/use-voice.ts';
import { CheckField } from './choice-fields.tsx';
import { LengthField } from './text-fields.tsx';
import { useUnits } from './use-places.ts';

/** What is cut from another paper to go with it. */
export function InlayFields({ knockout, path }: { readonly knockout: Json; readonly path: string }) {
  const { say } = useVoice();
  const units = useUnits();
  const [usualMargin, usualWidth] = [lengthToBegin(6, units), lengthToBegin(8, units)];
  const hasInlay = isObject(valueAt(knockout, '/inlay'));
  const hasFrame = isObject(valueAt(knockout, '/inlay/frame'));
  const frame = `${path}/inlay/frame`;
  return (
    <>
      <CheckField
        path={`${path}/inlay`}
        label={say('cutout.inlay')}
        checked={hasInlay}
        onChange={(checked) => change(`${path}/inlay`, checked ? { margin: usualMargin } : undefined)}
      />
      {hasInlay && (
        <>
          <p class="hint">{say('cutout.inlay.hint')}</p>
          <LengthField
            path={`${path}/inlay/margin`}
            label={say('cutout.inlay.margin')}
            usual={usualMargin}
            placeholder={usualMargin}
          />
          <CheckField
            path={frame}
            label={say('cutout.frame')}
            checked={hasFrame}
            onChange={(checked) => change(frame, checked ? { width: usualWidth } : undefined)}
          />
        </>
      )}
      {hasFrame && (
        <>
          <LengthField
            path={`${frame}/width`}
            label={say('cutout.frame.width')}
            usual={usualWidth}
            placeholder={usualWidth}
          />
          <LengthField path={`${frame}/reveal`} label={say('cutout.frame.reveal')} placeholder="0" />
          <LengthField path={`${frame}/raised`} label={say('cutout.frame.raised')} placeholder="0" />
        </>
      )}
    </>
  );
}
