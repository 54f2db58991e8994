import type { Examples } from './example.ts';

const thursday = { parameters: { member: 'Thursday evening' } };
const nobody = { parameters: { member: 'Nobody' } };

/** Examples of members, tokens and the whole as one file; the keeper of a group asks. */
export const memberExamples: Examples = {
  readMe: [{ name: 'keeper', summary: 'Who asks, and what the token may do' }],
  listMembers: [{ name: 'first-page', summary: 'The members of the group', parameters: { limit: '20' } }],
  readMember: [
    { name: 'member', summary: 'One member', ...thursday },
    { name: 'unknown', summary: 'Refused: nobody is called so', ...nobody },
  ],
  putMember: [
    { name: 'add', summary: 'Add a member', parameters: { member: 'Saturday evening' }, body: {} },
    { name: 'suspend', summary: 'Suspend a member', ...thursday, body: { active: false } },
    {
      name: 'last-keeper',
      summary: 'Refused: nobody would keep the group',
      parameters: { member: 'Keeper' },
      body: { active: false },
    },
  ],
  removeMember: [
    { name: 'member', summary: 'Remove a member with everything of theirs', ...thursday },
    { name: 'unknown', summary: 'Refused: nobody is called so', ...nobody },
  ],
  listTokens: [{ name: 'member', summary: 'The tokens of a member', ...thursday }],
  makeToken: [
    {
      name: 'until-new-year',
      summary: 'A token for the laptop of the craft evening',
      ...thursday,
      body: { scopes: ['read', 'write'], expires: '2027-01-01T00:00:00Z', note: 'the bench’s laptop' },
    },
  ],
  revokeToken: [
    {
      name: 'unknown',
      summary: 'Refused: there is no such token',
      parameters: { member: 'Thursday evening', id: '00000000000000000000' },
    },
  ],
  readAuditLog: [{ name: 'newest', summary: 'What the keepers did', parameters: { limit: '2' } }],
  exportEverything: [{ name: 'everything', summary: 'Everything as one file' }],
  restoreEverything: [
    {
      name: 'no-archive',
      summary: 'Refused: the file is no export',
      mediaType: 'application/x-ndjson',
      body: '{"tide":"low"}\n',
    },
  ],
  getMetrics: [{ name: 'now', summary: 'What the service counts', show: 'none' }],
};
