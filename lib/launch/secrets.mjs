import { randomBytes, randomInt } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

/** 32 random bytes in base64, made at the first call and kept in a file that only its owner can read. */
export function keptSecret(file) {
  if (!existsSync(file)) {
    mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
    writeFileSync(file, randomBytes(32).toString('base64'), { mode: 0o600, flag: 'wx' });
  }
  return readFileSync(file, 'utf8').trim();
}

/** A code of 60 random bits that can be read aloud: 'K7QM-03TX-9ZHB'. */
export function oneTimeCode() {
  const symbols = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
  const group = () => Array.from({ length: 4 }, () => symbols[randomInt(32)]).join('');
  return [group(), group(), group()].join('-');
}
