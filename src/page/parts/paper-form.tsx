import { useState } from 'preact/hooks';
import { paperForSpec } from '../spec/kept-paper.ts';
import { type Json, valueAt } from '../spec/pointer.ts';
import { change, design, swapFaces } from '../state/design.ts';
import { keptThings } from '../state/kept.ts';
import { dropPhoto, type Face, faces, loadPhoto, photoOn, photos } from '../state/photos.ts';
import { useStore } from '../state/store.ts';
import { useVoice } from '../words/use-voice.ts';
import { CheckField, RadioField } from './choice-fields.tsx';
import { KeepAs } from './keep-as.tsx';
import { More } from './more.tsx';
import { SizeField } from './size-field.tsx';
import { LengthField, NumberField, TextField } from './text-fields.tsx';
import { useSizes } from './use-sizes.ts';

function PhotoField({ face }: { readonly face: Face }) {
  const { say } = useVoice();
  const { swapped } = useStore(design, 'history').history.now;
  const there = photoOn(face, swapped, useStore(photos, ...faces));
  const [failed, setFailed] = useState(false);
  const own: Face = swapped ? (face === 'outside' ? 'inside' : 'outside') : face;
  const id = `photo-${face}`;
  return (
    <div class="field">
      <label for={id}>{say(`paper.photo.${face}`)}</label>
      <input
        id={id}
        type="file"
        accept="image/*"
        aria-describedby={failed ? `${id}-fault` : 'photo-hint'}
        onChange={async ({ currentTarget }) => {
          const file = currentTarget.files?.[0];
          if (file) setFailed(!(await loadPhoto(own, file)));
        }}
      />
      {failed && (
        <p class="fault" id={`${id}-fault`} role="alert">
          {say('paper.photo.unreadable')}
        </p>
      )}
      {there && (
        <p class="photo-there">
          <img src={there.address} alt={say(`paper.photo.${face}`)} />
          <button type="button" onClick={() => dropPhoto(own)}>
            {say('paper.photo.remove')}
          </button>
        </p>
      )}
    </div>
  );
}

const pairs = ['unknown', 'same-way', 'head-to-foot'] as const;

function turn(stock: Json | undefined, lies: boolean): void {
  if (stock !== undefined && !Array.isArray(stock)) change('/stock/turned', !lies);
}

/** The sheet that it is made of. */
export function PaperForm() {
  const { say } = useVoice();
  const { history, answer } = useStore(design, 'history', 'answer');
  const { kept } = useStore(keptThings, 'kept');
  const { spec } = history.now;
  const { stock } = spec;
  const several = Array.isArray(stock);
  const sizes = useSizes('sheet');
  const own = kept.stock.map(({ name, value }) => ({
    value: `kept:${name}`,
    label: name,
    holds: paperForSpec(name, value),
  }));
  const list = several
    ? [{ value: 'list', label: say('paper.sheet.list', { count: stock.length }), holds: stock as Json }]
    : [];
  const lies =
    answer?.state === 'folded' ? answer.plan.sheet.turned : valueAt(spec, '/stock/turned') === true;
  const single = stock !== undefined && !several;

  return (
    <section class="slip" aria-labelledby="paper-title">
      <h2 id="paper-title">{say('paper.title')}</h2>
      <SizeField
        path="/stock"
        label={say('paper.sheet')}
        none={say('paper.sheet.any')}
        widthLabel={say('paper.width')}
        heightLabel={say('paper.height')}
        others={[...own, ...list]}
        groups={[
          { label: say('paper.group.kept'), options: [...own, ...list] },
          { label: say('paper.group.craft'), options: sizes.craft },
          { label: say('paper.group.metric'), options: sizes.metric },
          { label: say('paper.group.inch'), options: sizes.inch },
        ]}
      />
      {single && (
        <>
          <p class="buttons">
            <button type="button" aria-pressed={lies} onClick={() => turn(stock, lies)}>
              {say('paper.turn')}
            </button>
            <button type="button" aria-pressed={history.now.swapped} onClick={swapFaces}>
              {say('paper.swap')}
            </button>
          </p>
          <More title={say('paper.more')}>
            <LengthField
              path="/stock/caliper"
              label={say('paper.caliper')}
              hint={say('paper.caliper.hint')}
              placeholder="0.3 mm"
            />
            <NumberField path="/stock/grammage" label={say('paper.grammage')} />
            <CheckField
              path="/stock/oneWay"
              label={say('paper.oneWay')}
              checked={valueAt(spec, '/stock/oneWay') === true}
              onChange={(checked) => change('/stock/oneWay', checked ? true : undefined)}
            />
            <RadioField
              path="/stock/printPair"
              label={say('paper.printPair')}
              value={String(valueAt(spec, '/stock/printPair') ?? 'unknown')}
              options={pairs.map((value) => ({ value, label: say(`paper.printPair.${value}`) }))}
              onChoose={(value) => change('/stock/printPair', value === 'unknown' ? undefined : value)}
            />
            <p class="hint" id="photo-hint">
              {say('paper.photo.hint')}
            </p>
            {faces.map((face) => (
              <PhotoField key={face} face={face} />
            ))}
            <TextField path="/stock/name" label={say('paper.name')} />
            <KeepAs
              kind="stock"
              label={say('keep.paper')}
              value={stock}
              name={valueAt(spec, '/stock/name')}
            />
          </More>
        </>
      )}
    </section>
  );
}
