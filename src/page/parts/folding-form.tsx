import type { StyleChoice, StyleForm } from '../ask/style-form.ts';
import { type Json, valueAt } from '../spec/pointer.ts';
import { change, design, put } from '../state/design.ts';
import { useStore } from '../state/store.ts';
import { numberIn } from '../words/lengths.ts';
import { isWordName, type Say } from '../words/say.ts';
import type { Tell } from '../words/tell.ts';
import { useVoice } from '../words/use-voice.ts';
import { RadioField, SelectField } from './choice-fields.tsx';
import { More } from './more.tsx';
import { LengthField } from './text-fields.tsx';

/** What the page calls a choice of a style, or an option of it; else the words of the spec itself. */
function choiceName(say: Say, tell: Tell, style: string, { path }: StyleChoice, option?: string): string {
  const name = `folding.choice.${style}${path}${option === undefined ? '' : `=${option}`}`;
  return isWordName(name) ? say(name) : tell(option ?? path.slice(1).replaceAll('/', ' ')).text;
}

/** Members that every style reads. */
const shared = new Set([
  'units',
  'contents',
  'stock',
  'cutter',
  'grid',
  'prefer',
  'glue',
  'ease',
  'convention',
]);

function chooseStyle(name: string): void {
  const { now } = design.get().history;
  const kept = Object.entries(now.spec).filter(([member]) => shared.has(member));
  put({ ...now, spec: { style: name, ...Object.fromEntries(kept) } });
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
          onChoose={chooseStyle}
        />
      )}
      <p class="hint">{tell(form.summary).text}</p>
      <Choices form={form} />
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
        <LengthField path="/glue/width" label={say('folding.glue')} />
      </More>
    </section>
  );
}
