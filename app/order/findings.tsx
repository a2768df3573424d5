'use client';

import { FindingCard } from '@/app/_components/finding-card';
import { MuscleFigure } from '@/app/_components/muscle-figure';
import { targetName } from '@/lib/cuts';
import { capital } from '@/lib/forms';
import type { Finding, FindingPlace } from '@/lib/rules';
import { useFormWorld, useLiveForm, useStand } from './form-context';

/** One finding with the buttons that mend it, each with what follows from it. */
export function FormFinding({ finding }: { readonly finding: Finding }) {
  const { shop } = useFormWorld();
  return (
    <FindingCard severity={finding.severity} message={finding.message} ruleId={finding.ruleId} opensApart>
      {finding.suggestions.length > 0 && (
        <ul className="mends">
          {finding.suggestions.map((suggestion, at) => (
            <li key={suggestion.label}>
              {suggestion.target && suggestion.target !== finding.suggestions[at - 1]?.target && (
                <MuscleFigure target={suggestion.target} name={capital(targetName(suggestion.target, shop.country))} />
              )}
              <button type="submit" name="intent" value={`mend:${finding.key}#${at}`} className="button plain">
                {suggestion.label}
              </button>
              <p className="quiet-text">{suggestion.consequence}</p>
            </li>
          ))}
        </ul>
      )}
    </FindingCard>
  );
}

export function FindingList({ findings }: { readonly findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  return (
    <ul className="findings">
      {findings.map((finding) => (
        <li key={finding.key}>
          <FormFinding finding={finding} />
        </li>
      ))}
    </ul>
  );
}

/** The findings that belong at one place of the form: a line, a part or a question. */
export function FindingsAt({ place }: { readonly place: FindingPlace }) {
  const { findings } = useLiveForm();
  return <FindingList findings={findings.filter((finding) => isSamePlace(finding.place, place))} />;
}

type Field = Extract<FindingPlace, { kind: 'field' }>['field'];

export function FindingsAtField({ field }: { readonly field: Field }) {
  return (
    <div {...useStand(`at-${field}`)}>
      <FindingsAt place={{ kind: 'field', field }} />
    </div>
  );
}

function isSamePlace(a: FindingPlace, b: FindingPlace): boolean {
  switch (a.kind) {
    case 'line':
      return b.kind === 'line' && a.lineId === b.lineId;
    case 'part':
      return b.kind === 'part' && a.part === b.part;
    case 'field':
      return b.kind === 'field' && a.field === b.field;
  }
}
