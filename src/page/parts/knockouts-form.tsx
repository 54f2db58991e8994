import { useState } from 'preact/hooks';
import {
  asKind,
  type KindName,
  kindNames,
  kindOf,
  measuresOf,
  newKnockout,
  offsetPath,
  type Places,
} from '../spec/knockouts.ts';
import { type Json, valueAt } from '../spec/pointer.ts';
import { change, design } from '../state/design.ts';
import { useStore } from '../state/store.ts';
import { useVoice } from '../words/use-voice.ts';
import { RadioField, SelectField } from './choice-fields.tsx';
import { More } from './more.tsx';
import { OffsetField } from './offset-field.tsx';
import { LengthField, NumberField, TextField } from './text-fields.tsx';

const anchors = [
  'top left',
  'top',
  'top right',
  'left',
  'centre',
  'right',
  'bottom left',
  'bottom',
  'bottom right',
] as const;
const fonts = ['plain', 'stencil', 'script'] as const;
const depths = ['seen-layer', 'every-layer'] as const;

const listIn = (value: Json | undefined): readonly Json[] =>
  Array.isArray(value) ? (value as readonly Json[]) : [];

/** Places and pockets that the folder has; until there is one, those that nearly every folder has. */
function usePlaces(): {
  readonly places: readonly string[];
  readonly pockets: readonly string[];
  readonly first: Places;
} {
  const { folded } = useStore(design, 'folded');
  const places = folded?.plan.places.map(({ name }) => name) ?? ['front cover'];
  const pockets = folded?.pockets ?? [];
  return {
    places,
    pockets,
    first: { place: places[0] ?? 'front cover', pocket: pockets[0] ?? 'front pocket' },
  };
}

/** What is asked of each kind. */
function Measures({ kind, path }: { readonly kind: KindName; readonly path: string }) {
  const { say } = useVoice();
  const { spec } = useStore(design, 'history').history.now;
  if (kind === 'lettering')
    return (
      <>
        <TextField path={`${path}/figure/lettering`} label={say('cutout.text')} />
        <SelectField
          path={`${path}/figure/font`}
          label={say('cutout.font')}
          value={String(valueAt(spec, `${path}/figure/font`) ?? 'plain')}
          options={fonts.map((value) => ({ value, label: say(`cutout.font.${value}`) }))}
          onChoose={(value) => change(`${path}/figure/font`, value === 'plain' ? undefined : value)}
        />
        <LengthField path={`${path}/figure/height`} label={say('cutout.of.letters')} />
      </>
    );
  if (kind === 'ribbon-slots') return <LengthField path={`${path}/ribbon`} label={say('cutout.ribbon')} />;
  if (kind === 'thumb-notch')
    return <LengthField path={`${path}/radius`} label={say('cutout.radius')} placeholder="12 mm" />;
  if (kind === 'rounded-corners') return <LengthField path={`${path}/radius`} label={say('cutout.radius')} />;
  return (
    <div class="pair">
      {measuresOf(kind).map((name) =>
        name === 'points' || name === 'sides' ? (
          <NumberField key={name} path={`${path}/figure/${name}`} label={say(`cutout.of.${name}`)} />
        ) : (
          <LengthField key={name} path={`${path}/figure/${name}`} label={say(`cutout.of.${name}`)} />
        ),
      )}
    </div>
  );
}

interface KnockoutProps {
  readonly knockout: Json;
  readonly index: number;
  readonly onRemove: () => void;
}

function Knockout({ knockout, index, onRemove }: KnockoutProps) {
  const { say, tell } = useVoice();
  const { places, pockets, first } = usePlaces();
  const path = `/knockouts/${index}`;
  const kind = kindOf(knockout);
  const placePath = valueAt(knockout, '/on') === undefined ? '/place' : '/on/place';
  const place = valueAt(knockout, placePath);
  const pocket = valueAt(knockout, '/pocket');
  const offset = offsetPath(knockout);
  const isFigure = valueAt(knockout, '/kind') === 'figure';
  const name = kind ? say(`cutout.kind.${kind}`) : String(valueAt(knockout, '/kind') ?? '');
  const title = `${index + 1}. ${name}`;
  /** A name that the folder does not have stays to be seen. */
  const options = (names: readonly string[], held: Json | undefined) =>
    [...new Set([...names, ...(typeof held === 'string' ? [held] : [])])].map((value) => ({
      value,
      label: tell(value).text,
    }));
  return (
    <fieldset class="knockout">
      <legend>{title}</legend>
      {kind && (
        <SelectField
          path={`${path}/kind`}
          label={say('cutout.what')}
          value={kind}
          options={kindNames.map((value) => ({ value, label: say(`cutout.kind.${value}`) }))}
          onChoose={(value) => change(path, asKind(value as KindName, knockout, first))}
        />
      )}
      {kind && <Measures kind={kind} path={path} />}
      {typeof place === 'string' && (
        <SelectField
          path={`${path}${placePath}`}
          label={say('cutout.place')}
          value={place}
          options={options(places, place)}
          onChoose={(value) => change(`${path}${placePath}`, value)}
        />
      )}
      {typeof pocket === 'string' && (
        <SelectField
          path={`${path}/pocket`}
          label={say('cutout.pocket')}
          value={pocket}
          options={options(pockets, pocket)}
          onChoose={(value) => change(`${path}/pocket`, value)}
        />
      )}
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
      {isFigure && (
        <More title={say('cutout.more')}>
          <NumberField path={`${path}/turn`} label={say('cutout.turn')} placeholder="0" />
          <RadioField
            path={`${path}/through`}
            label={say('cutout.through')}
            value={String(valueAt(knockout, '/through') ?? 'seen-layer')}
            options={depths.map((value) => ({ value, label: say(`cutout.through.${value}`) }))}
            onChoose={(value) => change(`${path}/through`, value === 'seen-layer' ? undefined : value)}
          />
        </More>
      )}
      <p class="buttons">
        <button type="button" aria-label={`${say('cutout.remove')}: ${title}`} onClick={onRemove}>
          {say('cutout.remove')}
        </button>
      </p>
    </fieldset>
  );
}

/** Everything that is cut out, one under the other, and what else could be. */
export function KnockoutsForm() {
  const { say } = useVoice();
  const { spec } = useStore(design, 'history').history.now;
  const { first } = usePlaces();
  const [kind, setKind] = useState<KindName>('circle');
  const list = listIn(spec.knockouts);
  const put = (next: readonly Json[]) => change('/knockouts', next.length === 0 ? undefined : next);
  return (
    <>
      {list.map((knockout, index) => (
        <Knockout
          key={`${index} of ${list.length}`}
          knockout={knockout}
          index={index}
          onRemove={() => put(list.filter((_, at) => at !== index))}
        />
      ))}
      {list.length > 0 && (
        <p class="hint">
          {say('cutout.hint')} {say('cutout.signed')}
        </p>
      )}
      <div class="add-knockout">
        <SelectField
          path="/knockouts/new"
          label={say('cutout.what')}
          value={kind}
          options={kindNames.map((value) => ({ value, label: say(`cutout.kind.${value}`) }))}
          onChoose={(value) => setKind(value as KindName)}
        />
        <button type="button" onClick={() => put([...list, newKnockout(kind, first)])}>
          {say(list.length === 0 ? 'cutout.open' : 'cutout.add')}
        </button>
      </div>
    </>
  );
}
