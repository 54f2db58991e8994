import { describe } from 'vitest';
import { membersContract } from './members-contract.ts';
import { sqliteRecords } from './records-place.ts';

describe('members on SQLite', () => {
  membersContract(sqliteRecords);
});
