import { DEFERENCE } from '@/lib/rules';

/** Safety words where the work can hurt someone, ending in whom they defer to. */
export function Caution({ texts }: { readonly texts: readonly string[] }) {
  return (
    <aside className="caution" aria-label="Caution">
      {texts.map((text) => (
        <p key={text}>{text}</p>
      ))}
      <p className="quiet-text">{DEFERENCE}</p>
    </aside>
  );
}
