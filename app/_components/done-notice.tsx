type DoneNoticeProps = {
  /** The `done` of the address. */
  readonly done: string | readonly string[] | undefined;
  readonly words: Readonly<Record<string, string>>;
};

/** Says what the step before this page did. An unknown word in the address says nothing. */
export function DoneNotice({ done, words }: DoneNoticeProps) {
  if (typeof done !== 'string' || !Object.hasOwn(words, done)) return null;
  return (
    <p className="notice good" role="status">
      {words[done]}
    </p>
  );
}
