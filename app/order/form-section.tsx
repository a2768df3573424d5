'use client';

import type { ReactNode } from 'react';
import { sectionId, type OrderSection } from '@/lib/forms';
import { useStand } from './form-context';

type FormSectionProps = {
  readonly section: OrderSection;
  readonly number: number;
  readonly title: string;
  readonly lede?: ReactNode;
  readonly children: ReactNode;
};

/** One of the five topics of the form. */
export function FormSection({ section, number, title, lede, children }: FormSectionProps) {
  return (
    <section className="section order-section" aria-labelledby={sectionId(section)}>
      <h2 {...useStand(sectionId(section))}>
        <span className="section-number">{number}</span> {title}
      </h2>
      {lede && <p className="quiet-text">{lede}</p>}
      {children}
    </section>
  );
}
