import type { StoreFault } from '../store/store-errors.ts';
import { topic } from './topic.ts';

/** A spec was solved and proved, or refused. */
export interface PlanNews {
  readonly style: string;
  readonly outcome: 'solved' | 'refused';
}

export const plans = topic<PlanNews>('hemfold:plans');

/** One piece of work on the store has ended. */
export interface StoreNews {
  readonly operation: 'read' | 'change' | 'snapshot';
  /** `error` is one that does not speak of the database. */
  readonly outcome: 'done' | 'error' | StoreFault;
  readonly seconds: number;
}

export const storeWork = topic<StoreNews>('hemfold:store');
