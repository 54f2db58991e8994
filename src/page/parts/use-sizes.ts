import { useMemo } from 'preact/hooks';
import type { SizeKind } from '../../../shared/sizes/size.ts';
import type { SizeOption } from '../ask/catalogue.ts';
import { design } from '../state/design.ts';
import { useStore } from '../state/store.ts';
import { useVoice } from '../words/use-voice.ts';

const groups = ['craft', 'metric', 'inch'] as const;

/** The published sizes of a kind in the reader's language, by the system that they are defined in. */
export function useSizes(kind: SizeKind): Readonly<Record<(typeof groups)[number], readonly SizeOption[]>> {
  const { tell } = useVoice();
  const { sizes } = useStore(design, 'catalogue').catalogue;
  return useMemo(() => {
    const own = sizes
      .filter(({ kinds }) => kinds.includes(kind))
      .map((size) => ({ ...size, label: tell(size.label).text }));
    const [craft, metric, inch] = groups.map((group) => own.filter((size) => size.group === group));
    return { craft: craft ?? [], metric: metric ?? [], inch: inch ?? [] };
  }, [sizes, kind, tell]);
}
