import type { ReactNode } from 'react';
import { Wordmark } from './wordmark';

type HunterPageProps = {
  readonly shop: { readonly name: string; readonly phone: string; readonly address: string; readonly questionsContact: string };
  readonly wide?: boolean;
  /** Small links at the foot. */
  readonly foot?: ReactNode;
  readonly children: ReactNode;
};

/** A page for hunters: the shop's name at the top, how to reach it at the foot. */
export function HunterPage({ shop, wide = false, foot, children }: HunterPageProps) {
  return (
    <>
      <header className="masthead">
        <Wordmark href="/" shop={shop.name} />
      </header>
      <main className={wide ? 'page wide hunter' : 'page hunter'} id="main">
        {children}
      </main>
      <footer className="colophon">
        <p>
          {[shop.name, ...shop.address.split('\n')].filter((line) => line.trim() !== '').join(', ')}
          {shop.phone && (
            <>
              {' '}
              <a className="nowrap" href={`tel:${shop.phone.replace(/[^\d+]/g, '')}`}>
                {shop.phone}
              </a>
            </>
          )}
        </p>
        {shop.questionsContact && <p>Questions: {shop.questionsContact}</p>}
        {foot && <p>{foot}</p>}
      </footer>
    </>
  );
}
