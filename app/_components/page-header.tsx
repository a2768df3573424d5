import type { ReactNode } from 'react';

type PageHeaderProps = {
  readonly title: ReactNode;
  readonly kicker?: ReactNode;
  readonly lede?: ReactNode;
  readonly back?: { readonly href: string; readonly text: string };
  /** Tags or buttons that stand beside the title. */
  readonly children?: ReactNode;
};

export function PageHeader({ title, kicker, lede, back, children }: PageHeaderProps) {
  return (
    <header className="page-header">
      <div>
        {back && (
          <a className="back" href={back.href}>
            {back.text}
          </a>
        )}
        {kicker && <p className="kicker">{kicker}</p>}
        <h1>{title}</h1>
        {lede && <p className="lede">{lede}</p>}
      </div>
      {children && <div className="row">{children}</div>}
    </header>
  );
}
