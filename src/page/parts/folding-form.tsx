import type { StyleChoice, StyleForm } from '../ask/style-form.ts';
import { asStyle } from '../spec/as-style.ts';
import { type Json, valueAt } from '../spec/pointer.ts';
import { change, design, put } from '../state/design.ts';
import { tellStatus } from '../state/status.ts';
import { useStore } from '../state/store.ts';
import { numberIn } from '../words/lengths.ts';
import { isWordName, type Say } from '../words/say.ts';
import type { Tell } from '../words/tell.ts';
import { useVoice } from '../words/use-voice.ts';
import { RadioField, SelectField } from './choice-fields.tsx';
import { More } from './more.tsx';
import { LengthField, NumberField } from './text-fields.tsx';

/** What the page calls a choice of a style, or an option of it; else the words of the spec itself. */
function choiceName(say: Say, tell: Tell, style: string, { path }: StyleChoice, option?: string): string {
  const what = `${path}${option === undefined ? '' : `=${option}`}`;
  // some choices are the same in several styles
  const name = [`folding.choice.${style}${what}`, `folding.choice.${what}`].find(isWordName);
  return name ? say(name) : tell(option ?? path.slice(1).replaceAll('/', ' ')).text;
}

/** Whole numbers that a style takes, with what holds where none is given. */
const usualCounts: Readonly<Record<string, number>> = { '/panels': 3, '/tab/place': 1, '/tab/of': 3 };

/** A card base has as many panels as its fold says, but for these folds. */
const anyPanels = new Set<Json | undefined>(['zigzag', 'roll']);

function Counts({ form }: { readonly form: StyleForm }) {
  const { say, tell } = useVoice();
  const { spec } = useStore(design, 'history').history.now;
  const counts = form.counts.filter((path) => path !== '/panels' || anyPanels.has(spec.fold));
  return (
    <div class="pair">
      {counts.map((path) => {
        const name = `folding.count.${path}`;
        return (
          <NumberField
            key={path}
            path={path}
            label={isWordName(name) ? say(name) : tell(path.slice(1)).text}
            placeholder={String(usualCounts[path] ?? '')}
            usual={usualCounts[path]}
          />
        );
      })}
    </div>
  );
}

function Choices({ form }: { readonly form: StyleForm }) {
  const { say, tell } = useVoice();
  const { spec } = useStore(design, 'history').history.now;
  return (
    <>
      {form.choices.map((choice) => (
        <RadioField
          key={choice.path}
          path={choice.path}
          label={choiceName(say, tell, form.name, choice)}
          value={String(valueAt(spec, choice.path) ?? choice.usual)}
          options={choice.options.map((value) => ({
            value,
            label: choiceName(say, tell, form.name, choice, value),
          }))}
          onChoose={(value) => change(choice.path, value === choice.usual ? undefined : value)}
        />
      ))}
    </>
  );
}

/** How the sheet is folded, and which sizes are fixed. */
export function FoldingForm() {
  const { say, tell, language } = useVoice();
  const { history, catalogue, answer } = useStore(design, 'history', 'catalogue', 'answer');
  const { styles } = catalogue;
  const { spec } = history.now;
  const form = styles.find(({ name }) => name === spec.style) ?? styles[0];
  const inches = spec.units === 'in';
  const solved = answer?.state === 'folded' ? (answer.plan.dimensions as Json) : undefined;
  const placeholder = (path: string): string | undefined => {
    const [mm, inch] = ['mm', 'inch'].map((unit) =>
      valueAt(solved, `${path.replace('/dimensions', '')}/${unit}`),
    );
    if (mm === undefined || inch === undefined) return undefined;
    return inches ? `${inch} in` : `${numberIn(language, String(mm))} mm`;
  };
  if (!form) return null;
  return (
    <section class="slip" aria-labelledby="folding-title">
      <h2 id="folding-title">{say('folding.title')}</h2>
      {styles.length > 1 && (
        <SelectField
          path="/style"
          label={say('folding.style')}
          value={form.name}
          options={styles.map(({ name, title }) => ({ value: name, label: tell(title).text }))}
          onChoose={(name) => {
            const next = styles.find((each) => each.name === name);
            if (!next) return;
            put({ ...history.now, spec: asStyle(next, spec) });
            if (spec.knockouts !== undefined) tellStatus(say('folding.knockoutsLeft'));
          }}
        />
      )}
      <p class="hint">{tell(form.summary).text}</p>
      <Choices form={form} />
      <Counts form={form} />
      <More title={say('folding.lengths')}>
        <p class="hint">{say('folding.lengths.hint')}</p>
        <div class="pairs">
          {form.lengths.map(({ path, title }) => (
            <LengthField key={path} path={path} label={tell(title).text} placeholder={placeholder(path)} />
          ))}
        </div>
        <RadioField
          path="/prefer"
          label={say('folding.prefer')}
          value={String(spec.prefer ?? 'whole-sheet')}
          options={(['whole-sheet', 'least-paper'] as const).map((value) => ({
            value,
            label: say(`folding.prefer.${value}`),
          }))}
          onChoose={(value) => change('/prefer', value === 'whole-sheet' ? undefined : value)}
        />
        <LengthField path="/grid" label={say('folding.grid')} hint={say('folding.grid.hint')} />
        {form.madeFor === 'contents' && <LengthField path="/glue/width" label={say('folding.glue')} />}
      </More>
    </section>
  );
}
