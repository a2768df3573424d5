/** What a person does here: runs the shop, stands at the counter, cuts. */
export const ROLES = ['owner', 'counter', 'cutter'] as const;
export type Role = (typeof ROLES)[number];

const ROLE_WORDS: Readonly<Record<Role, { readonly name: string; readonly work: string }>> = {
  owner: { name: 'Owner', work: 'everything, prices, settings and people included' },
  counter: { name: 'Counter', work: 'takes orders and animals in, packs, bills, takes money, hands over' },
  cutter: { name: 'Cutter', work: 'finds and reads orders, prints sheets, cuts and weighs' },
};

/** Tells whether a text names a role. */
export function isRole(text: string): text is Role {
  return Object.hasOwn(ROLE_WORDS, text);
}

/**
 * Gives a role's name and, in a few words, what it may do.
 *
 * @example roleWords('cutter').name // 'Cutter'
 */
export function roleWords(role: Role): { readonly name: string; readonly work: string } {
  return ROLE_WORDS[role];
}
