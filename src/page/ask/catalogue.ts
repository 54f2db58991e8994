import { type StartingConvention, startingConventions } from '../../../shared/kept/starting-conventions.ts';
import { inInches, inMm, writeLength } from '../../../shared/lengths/show-length.ts';
import { sizes } from '../../../shared/sizes/catalogue.ts';
import type { Size, SizeKind } from '../../../shared/sizes/size.ts';
import { type StyleForm, styleForms } from './style-form.ts';

/** A published size as an entry of a list. */
export interface SizeOption {
  readonly value: string;
  /** In the core's English. */
  readonly label: string;
  readonly kinds: readonly SizeKind[];
  readonly group: 'craft' | 'metric' | 'inch';
  /** As a spec would give them. */
  readonly width: string;
  readonly height: string;
  /** Of an envelope: the cards that it is sold for. */
  readonly takes: readonly string[];
}

/** All that can be chosen from. */
export interface Catalogue {
  readonly styles: readonly StyleForm[];
  readonly sizes: readonly SizeOption[];
  readonly conventions: readonly StartingConvention[];
}

const ownSystem = ({ width, height, measure }: Size): string =>
  measure === 'inch' ? `${inInches(width)} × ${inInches(height)} in` : `${inMm(width)} × ${inMm(height)} mm`;

/** What people call a size, with its measures unless its name says them. */
function labelOf(size: Size): string {
  const [first] = ownSystem(size).split(' ×');
  return size.title.includes(`${first} x`)
    ? size.title.replaceAll(' x ', ' × ')
    : `${size.title}, ${ownSystem(size)}`;
}

const optionOf = (size: Size): SizeOption => ({
  value: size.id,
  label: labelOf(size),
  kinds: size.kinds,
  group: size.id.startsWith('craft-') ? 'craft' : size.measure,
  width: writeLength(size.width, size.measure),
  height: writeLength(size.height, size.measure),
  takes: size.takes ?? [],
});

export const catalogue = (): Catalogue => ({
  styles: styleForms(),
  sizes: sizes.map(optionOf),
  conventions: startingConventions,
});
