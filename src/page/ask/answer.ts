import type { PlanReply } from '../../../shared/plan-reply/plan-reply.ts';
import type { Mark } from '../../../shared/views/picture.ts';

/** Something in the spec that is to be mended, in the core's own English. */
export interface Fault {
  /** JSON Pointer into the spec; empty for the whole of it. */
  readonly path: string;
  readonly message: string;
  readonly remedy?: string;
}

/** One thing seen, in millimetres of its own page. */
export interface Sight {
  readonly name: string;
  readonly description: string;
  readonly marks: readonly Mark[];
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** How many of its millimetres are a real one, where that means something. */
  readonly ratio?: number;
}

/** The finished folder from every side. */
export type SightName = 'outside' | 'inside' | 'closed' | 'half-open';

/** A straight line of the open sheet, in millimetres. */
export interface Stroke {
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
}

/** The open sheet with its inside face up, in millimetres from its top left corner. */
export interface OpenSheet {
  readonly sheet: { readonly width: number; readonly height: number };
  readonly blank: { readonly width: number; readonly height: number };
  readonly valleys: readonly Stroke[];
  readonly mountains: readonly Stroke[];
  /** Path data of what is cut. */
  readonly cuts: string;
  readonly outline: string;
  readonly knockouts: readonly { readonly id: string; readonly data: string }[];
  readonly panels: readonly {
    readonly label: string;
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  }[];
  /** Where the up of each face's print points. */
  readonly ups: Readonly<Record<'outside' | 'inside', { readonly x: number; readonly y: number }>>;
}

/** Where the print of a paper with an up and a down does not point up. */
export interface Askew {
  readonly view: string;
  readonly way: 'inverted' | 'turned left' | 'turned right';
  /** Names of parts, in the core's English. */
  readonly parts: readonly string[];
}

/** Published contents that the pockets of a folder without contents take. */
export interface Fit {
  readonly item: string;
  readonly envelope?: string;
  readonly perPocket: number;
}

/** A knockout where it can be taken hold of, in millimetres of the picture in which it is seen squarely. */
export interface Grip {
  /** Its place in the spec's list. */
  readonly index: number;
  readonly title: string;
  readonly side: 'outside' | 'inside';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface FoldedAnswer {
  readonly state: 'folded';
  /** Without alternatives, which take longer. */
  readonly plan: PlanReply;
  readonly open: OpenSheet;
  readonly askew: readonly Askew[];
  /** Why it must not be cut so, where it must not. */
  readonly forbids: readonly Fault[];
  readonly grips: readonly Grip[];
  /** Names of pockets, for thumb notches. */
  readonly pockets: readonly string[];
  readonly sights: Readonly<Record<SightName, Sight>>;
}

/** What the core makes of a spec. */
export type Answer =
  | FoldedAnswer
  | { readonly state: 'empty' }
  | { readonly state: 'unreadable'; readonly faults: readonly Fault[] }
  | { readonly state: 'refused'; readonly faults: readonly Fault[] };

/** A change that was tried and works. */
export type Proposal = PlanReply['alternatives'][number];

/** One step of the folding as a picture with its sentence. */
export interface ShownStep {
  readonly words: string;
  readonly sight: Sight;
}

/** What takes longer than a frame, told after the answer. */
export interface Further {
  /** Remedies of a refusal, or alternatives to a plan. */
  readonly proposals: readonly Proposal[];
  readonly steps: readonly ShownStep[];
  readonly fits: readonly Fit[];
}
