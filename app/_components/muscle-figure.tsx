import type { TargetId } from '@/lib/cuts';

type MuscleFigureProps = {
  readonly target: TargetId;
  /** What the shop calls it. */
  readonly name: string;
  /** Where it is, in words: the picture says no more than they do. */
  readonly where?: string | undefined;
};

/** Where one muscle is: a small picture with it hatched, its name beside it. A file of its own, fetched when it is first seen. */
export function MuscleFigure({ target, name, where }: MuscleFigureProps) {
  return (
    <figure className="muscle-figure">
      <picture>
        <source srcSet={`/muscle/${target}-dark.svg`} media="(prefers-color-scheme: dark)" />
        {/* oxlint-disable-next-line nextjs/no-img-element -- a drawing has one size, and needs no script to choose it */}
        <img src={`/muscle/${target}.svg`} width={160} height={140} alt="" loading="lazy" />
      </picture>
      <figcaption>
        <b>{name}</b>
        {where && <span>{where}</span>}
      </figcaption>
    </figure>
  );
}

/** The picture behind a question, for a name that means another muscle elsewhere. */
export function WhereIsThis(figure: MuscleFigureProps) {
  return (
    <details className="more">
      <summary>Where is this?</summary>
      <MuscleFigure {...figure} />
    </details>
  );
}
