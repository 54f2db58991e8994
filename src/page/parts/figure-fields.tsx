import { useState } from 'preact/hooks';
import { type KindName, measuresOf } from '../spec/knockouts.ts';
import { isObject, valueAt } from '../spec/pointer.ts';
import { change, design } from '../state/design.ts';
import { useStore } from '../state/store.ts';
import { useVoice } from '../words/use-voice.ts';
import { CheckField, SelectField } from './choice-fields.tsx';
import { FileField } from './file-field.tsx';
import { asBase64, asText } from './file-reading.ts';
import { LengthField, NumberField, TextField } from './text-fields.tsx';

const fonts = ['plain', 'stencil', 'script', 'own'] as const;

/** Narrow bridges that hold what would fall out of letters and drawings. */
function BridgesField({ path }: { readonly path: string }) {
  const { say } = useVoice();
  const { spec } = useStore(design, 'history').history.now;
  return (
    <CheckField
      path={`${path}/bridges`}
      label={say('cutout.bridges')}
      checked={valueAt(spec, `${path}/bridges`) !== 'none'}
      onChange={(checked) => change(`${path}/bridges`, checked ? undefined : 'none')}
    />
  );
}

/** Letters in one of the fonts that come along, or in one of the maker's own. */
function LetteringFields({ path }: { readonly path: string }) {
  const { say } = useVoice();
  const held = valueAt(useStore(design, 'history').history.now.spec, `${path}/font`);
  const [wantsOwn, setWantsOwn] = useState(isObject(held));
  const font = isObject(held) || wantsOwn ? 'own' : String(held ?? 'plain');
  return (
    <>
      <TextField path={`${path}/lettering`} label={say('cutout.text')} />
      <SelectField
        path={`${path}/font`}
        label={say('cutout.font')}
        value={font}
        options={fonts.map((value) => ({ value, label: say(`cutout.font.${value}`) }))}
        onChoose={(value) => {
          setWantsOwn(value === 'own');
          change(`${path}/font`, value === 'plain' || value === 'own' ? undefined : value);
        }}
      />
      {font === 'own' && (
        <FileField
          path={`${path}/font/file`}
          label={say('cutout.font.file')}
          accept=".ttf,.otf,.woff"
          read={asBase64}
        />
      )}
      <LengthField path={`${path}/height`} label={say('cutout.of.letters')} />
      <BridgesField path={path} />
    </>
  );
}

/** A drawing of the maker's own. */
function ArtworkFields({ path }: { readonly path: string }) {
  const { say } = useVoice();
  return (
    <>
      <FileField
        path={`${path}/artwork`}
        label={say('cutout.artwork')}
        hint={say('cutout.artwork.hint')}
        accept=".svg,image/svg+xml"
        read={asText}
      />
      <div class="pair">
        <LengthField path={`${path}/width`} label={say('cutout.of.width')} />
        <LengthField path={`${path}/height`} label={say('cutout.of.height')} />
      </div>
      <BridgesField path={path} />
    </>
  );
}

/** What is asked of each kind. @param path of the knockout */
export function FigureFields({ kind, path }: { readonly kind: KindName; readonly path: string }) {
  const { say } = useVoice();
  const radius = (placeholder?: string) => (
    <LengthField path={`${path}/radius`} label={say('cutout.radius')} placeholder={placeholder} />
  );
  switch (kind) {
    case 'lettering':
      return <LetteringFields path={`${path}/figure`} />;
    case 'artwork':
      return <ArtworkFields path={`${path}/figure`} />;
    case 'ribbon-slots':
      return <LengthField path={`${path}/ribbon`} label={say('cutout.ribbon')} />;
    case 'thumb-notch':
      return radius('12 mm');
    case 'rounded-corners':
      return radius();
    default:
      return (
        <div class="pair">
          {measuresOf(kind).map((name) => {
            const Measure = name === 'points' || name === 'sides' ? NumberField : LengthField;
            return <Measure key={name} path={`${path}/figure/${name}`} label={say(`cutout.of.${name}`)} />;
          })}
        </div>
      );
  }
}
