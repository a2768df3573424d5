import { DEFERENCE } from '@/lib/rules';

/** Safety words where the work can hurt someone, ending in whom they defer to. */
export function Caution({ texts }: { readonly texts: readonly string[] }) {
  return (
    <div className="caution" role="note">
      {texts.map((text) => (
        <p key={text}>{text}</p>
      ))}
      <p className="quiet-text">{DEFERENCE}</p>
    </div>
  );
}
