/** The secret that signs the cookies. Throws when the program was not started by its own script, which provides it. */
export function authSecret(): string {
  const secret = process.env['BETTER_AUTH_SECRET'];
  if (!secret || secret.length < 32) throw new Error('BETTER_AUTH_SECRET is missing or shorter than 32 characters: start with npm start.');
  return secret;
}
