import { randomInt } from 'node:crypto';
import { hash, verify } from '@node-rs/argon2';
import { normalizePassword } from '@/lib/forms';

// Argon2id, 19 MiB, two passes, one lane. Source: OWASP Password Storage Cheat Sheet. The package's own default is Argon2id.
const cost = { memoryCost: 19_456, timeCost: 2, parallelism: 1, outputLen: 32 } as const;

export function hashPassword(password: string): Promise<string> {
  return hash(normalizePassword(password), cost);
}

/** Tells whether a password is the one that was hashed. Against null it takes as long and is false. */
export async function verifyPassword(passwordHash: string | null, password: string): Promise<boolean> {
  const matches = await verify(passwordHash ?? (await nobodysHash()), normalizePassword(password));
  return matches && passwordHash !== null;
}

let nobody: Promise<string> | undefined;

function nobodysHash(): Promise<string> {
  nobody ??= hashPassword('the password of nobody');
  return nobody;
}

/** A password that can be read aloud and typed: five groups of four letters and digits, none of which is mistaken for another. */
export function makePassword(): string {
  const symbols = 'abcdefghjkmnpqrstuvwxyz23456789';
  const group = (): string => Array.from({ length: 4 }, () => symbols[randomInt(symbols.length)]).join('');
  return [group(), group(), group(), group(), group()].join('-');
}
