/** One sample of the Prometheus text format. */
export interface Sample {
  readonly name: string;
  readonly labels: Readonly<Record<string, string>>;
  readonly value: number;
}

const help = /^# HELP ([a-zA-Z_:][a-zA-Z0-9_:]*) \S.*$/u;
const type = /^# TYPE ([a-zA-Z_:][a-zA-Z0-9_:]*) (?:counter|gauge|histogram|summary|untyped)$/u;
const sample = /^([a-zA-Z_:][a-zA-Z0-9_:]*)(?:\{(.*)\})? (\S+)$/u;
const label = /([a-zA-Z_][a-zA-Z0-9_]*)="((?:[^"\\\n]|\\["\\n])*)"(?:,|$)/gu;

function labelsIn(text: string): Readonly<Record<string, string>> {
  const found = [...text.matchAll(label)];
  if (found.map(([whole]) => whole).join('') !== text) throw new Error(`not labels: ${text}`);
  return Object.fromEntries(found.map(([, name = '', value = '']) => [name, value]));
}

function numberIn(text: string): number {
  const value = text === '+Inf' ? Number.POSITIVE_INFINITY : Number(text);
  if (Number.isNaN(value) && text !== 'NaN' && text !== 'Nan') throw new Error(`not a number: ${text}`);
  return value;
}

/**
 * Reads version 0.0.4 of the text format, https://prometheus.io/docs/instrumenting/exposition_formats/: every family
 * has a help and a type before its samples, and no series comes twice.
 * @throws {Error} for anything else
 */
export function readMetrics(text: string): readonly Sample[] {
  if (!text.endsWith('\n')) throw new Error('the last line must end');
  const told = { help: new Set<string>(), type: new Set<string>() };
  const series = new Map<string, Sample>();
  for (const line of text.split('\n')) {
    const [, helped] = help.exec(line) ?? [];
    const [, typed] = type.exec(line) ?? [];
    if (helped !== undefined || typed !== undefined) {
      const [set, family] = helped === undefined ? [told.type, typed ?? ''] : [told.help, helped];
      if (set.has(family)) throw new Error(`${family} comes twice`);
      set.add(family);
      continue;
    }
    if (line === '') continue;
    const [, name = '', labels = '', value = ''] = sample.exec(line) ?? [];
    if (name === '') throw new Error(`not a line of the format: ${line}`);
    const family = name.replace(/_(?:bucket|sum|count)$/u, '');
    if (![name, family].some((each) => told.help.has(each) && told.type.has(each)))
      throw new Error(`${name} has no help or no type`);
    const key = `${name}{${labels}}`;
    if (series.has(key)) throw new Error(`${key} comes twice`);
    series.set(key, { name, labels: labelsIn(labels), value: numberIn(value) });
  }
  return [...series.values()];
}
