/** The texts of a sent form by name, each cut at 10,000 characters. Files and the framework's own fields are passed over. */
export function typedTexts(data: FormData): Record<string, string> {
  const texts: [string, string][] = [];
  for (const [name, value] of data) {
    if (typeof value === 'string' && !name.startsWith('$')) texts.push([name, value.slice(0, 10_000)]);
  }
  return Object.fromEntries(texts);
}

/** What may be sent back to be shown again. */
export function withoutPasswords(typed: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(Object.entries(typed).filter(([name]) => !/password/i.test(name)));
}
