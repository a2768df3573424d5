import { z } from 'zod';
import { ROLES } from '@/lib/access';
import { passwordProblem } from './password';
import { placeFields, shopName } from './shop-settings';
import { lineOf } from './text-fields';

/** How a name to sign in with is kept and compared: small letters, no blanks around it. */
export function normalizeUserName(typed: string): string {
  return typed.trim().toLowerCase();
}

/** Tells whether a text can be the name of an account: 2 to 30 of a-z, 0-9, dot, hyphen, underscore. */
export function isUserName(text: string): boolean {
  return /^[a-z0-9][a-z0-9._-]{1,29}$/.test(text);
}

const userName = z
  .string('Enter a user name')
  .transform(normalizeUserName)
  .pipe(
    z
      .string()
      .min(1, 'Enter a user name')
      .refine((name) => name === '' || isUserName(name), 'Use 2 to 30 letters, digits, dots or hyphens for the user name, starting with a letter or digit'),
  );

const personName = lineOf({ missing: 'Enter a name', longest: 60 });
const password = z.string('Enter a password').superRefine((typed, context) => {
  const problem = passwordProblem(typed, []);
  if (problem !== null) context.addIssue({ code: 'custom', message: problem });
});

/** Adding a person: name, user name, role, first password. */
export const newStaffSchema = z
  .object({ name: personName, userName, role: z.enum(ROLES, 'Choose what this person does here'), password })
  .check(({ value, issues }) => {
    const problem = passwordProblem(value.password, [value.name, value.userName]);
    if (problem !== null) issues.push({ code: 'custom', input: value, path: ['password'], message: problem });
  });
export type NewStaff = z.output<typeof newStaffSchema>;

/** Set-up: the code from the console, the shop, and its owner. */
export const setUpSchema = z
  .object({
    code: z.string('Enter the code').trim().min(1, 'Enter the code from the console'),
    shopName,
    ...placeFields,
    ownerName: lineOf({ missing: 'Enter your name', longest: 60 }),
    userName,
    password,
  })
  .check(({ value, issues }) => {
    const problem = passwordProblem(value.password, [value.ownerName, value.userName, value.shopName]);
    if (problem !== null) issues.push({ code: 'custom', input: value, path: ['password'], message: problem });
  });
export type SetUp = z.output<typeof setUpSchema>;
