import { describe } from 'vitest';
import { sqliteRecords } from '../members/records-place.ts';
import { archiveContract } from './archive-contract.ts';

describe('archives of SQLite', () => {
  archiveContract(sqliteRecords);
});
