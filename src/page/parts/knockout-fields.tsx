import { anchors } from '../../../shared/knockouts/anchors.ts';
import { asKind, type KindName, kindNames, kindOf, offsetPath } from '../spec/knockouts.ts';
import { type Json, valueAt } from '../spec/pointer.ts';
import { change } from '../state/design.ts';
import { useVoice } from '../words/use-voice.ts';
import { RadioField, SelectField } from './choice-fields.tsx';
import { fieldId } from './field-id.ts';
import { FigureFields } from './figure-fields.tsx';
import { InlayFields } from './inlay-fields.tsx';
import { KnockoutText } from './knockout-text.tsx';
import { More } from './more.tsx';
import { OffsetField } from './offset-field.tsx';
import { RepeatFields } from './repeat-fields.tsx';
import { NumberField } from './text-fields.tsx';
import { usePlaces } from './use-places.ts';

const depths = ['seen-layer', 'every-layer'] as const;

interface KnockoutProps {
  readonly knockout: Json;
  readonly index: number;
  readonly onRemove: () => void;
}

/** Where it is, as the finished folder is seen. */
function PlaceFields({ knockout, path }: { readonly knockout: Json; readonly path: string }) {
  const { say, tell } = useVoice();
  const { places, pockets } = usePlaces();
  const placePath = valueAt(knockout, '/on') === undefined ? '/place' : '/on/place';
  const offset = offsetPath(knockout);
  /** A name that the folder does not have stays to be seen. */
  const named = (pointer: string, label: string, names: readonly string[]) => {
    const held = valueAt(knockout, pointer);
    if (typeof held !== 'string') return null;
    return (
      <SelectField
        path={`${path}${pointer}`}
        label={label}
        value={held}
        options={[...new Set([...names, held])].map((value) => ({ value, label: tell(value).text }))}
        onChoose={(value) => change(`${path}${pointer}`, value)}
      />
    );
  };
  return (
    <>
      {named(placePath, say('cutout.place'), places)}
      {named('/pocket', say('cutout.pocket'), pockets)}
      {placePath === '/on/place' && (
        <SelectField
          path={`${path}/on/anchor`}
          label={say('cutout.anchor')}
          value={String(valueAt(knockout, '/on/anchor') ?? 'centre')}
          options={anchors.map((value) => ({ value, label: say(`cutout.anchor.${value}`) }))}
          onChoose={(value) => change(`${path}/on/anchor`, value === 'centre' ? undefined : value)}
        />
      )}
      {offset && (
        <div class="pair">
          <OffsetField path={`${path}${offset}`} axis="right" label={say('cutout.right')} />
          <OffsetField path={`${path}${offset}`} axis="down" label={say('cutout.down')} />
        </div>
      )}
    </>
  );
}

/** How it is turned, how deep it is cut, how often, and what goes with it. */
function MoreFields({ knockout, path }: { readonly knockout: Json; readonly path: string }) {
  const { say } = useVoice();
  const isFigure = valueAt(knockout, '/kind') === 'figure';
  const through = valueAt(knockout, '/through');
  const text = <KnockoutText knockout={knockout} path={path} />;
  if (valueAt(knockout, '/on') === undefined) return text;
  return (
    <More title={say('cutout.more')}>
      <NumberField path={`${path}/turn`} label={say('cutout.turn')} placeholder="0" />
      {(through === undefined || typeof through === 'string') && (
        <RadioField
          path={`${path}/through`}
          label={say('cutout.through')}
          value={through ?? 'seen-layer'}
          options={depths.map((value) => ({ value, label: say(`cutout.through.${value}`) }))}
          onChoose={(value) => change(`${path}/through`, value === 'seen-layer' ? undefined : value)}
        />
      )}
      {isFigure && (
        <>
          <RepeatFields knockout={knockout} path={path} />
          <InlayFields knockout={knockout} path={path} />
        </>
      )}
      {text}
    </More>
  );
}

/** One thing that is cut out. */
export function KnockoutFields({ knockout, index, onRemove }: KnockoutProps) {
  const { say } = useVoice();
  const { first } = usePlaces();
  const path = `/knockouts/${index}`;
  const kind = kindOf(knockout);
  const name = kind ? say(`cutout.kind.${kind}`) : String(valueAt(knockout, '/kind') ?? '');
  const title = `${index + 1}. ${name}`;
  return (
    <fieldset class="knockout" id={fieldId(path)} tabIndex={-1}>
      <legend>{title}</legend>
      {kind && (
        <>
          <SelectField
            path={`${path}/kind`}
            label={say('cutout.what')}
            value={kind}
            options={kindNames.map((value) => ({ value, label: say(`cutout.kind.${value}`) }))}
            onChoose={(value) => change(path, asKind(value as KindName, knockout, first))}
          />
          <FigureFields kind={kind} path={path} />
        </>
      )}
      <PlaceFields knockout={knockout} path={path} />
      <MoreFields knockout={knockout} path={path} />
      <p class="buttons">
        <button type="button" aria-label={`${say('cutout.remove')}: ${title}`} onClick={onRemove}>
          {say('cutout.remove')}
        </button>
      </p>
    </fieldset>
  );
}
