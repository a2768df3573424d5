import { Fragment } from 'react';
import { DoneNotice } from '@/app/_components/done-notice';
import { PageHeader } from '@/app/_components/page-header';
import { nothingHere } from '@/app/_components/turn-away';
import { requireStaff } from '@/lib/auth/current-staff';
import { type RuleGroup, ruleIndex } from '@/lib/documents';
import { type FixedRule, ruleChangesValues, ruleChoices } from '@/lib/forms';
import { RULES } from '@/lib/rules';
import { currentShop } from '@/lib/workflows/shop-settings';
import { RulesForm } from './rules-form';
import './rules.css';

export const metadata = { title: null };

/** All rules, and what the shop makes of them. */
export default async function StaffRulesPage({ searchParams }: PageProps<'/staff/rules'>) {
  await requireStaff('shop.settings');
  const [shop, { done, version }] = await Promise.all([currentShop(), searchParams]);
  if (shop === null) nothingHere('staff');
  const { groups, fixed } = ruleChoices(shop.settings.nameCountry);
  return (
    <main className="page wide" id="main">
      <PageHeader
        title="Rules"
        lede="What the form and the counter look for. Where your shop does it otherwise, soften a rule or leave it out, and say why: hunters read your reason on the page of the rule."
      />
      <DoneNotice done={done} words={{ saved: 'Saved. Forms, status pages and the counter go by it from now on.' }} />
      <SoftenedNow groups={ruleIndex(shop.settings.ruleChanges, shop.settings.nameCountry)} />
      {/* Anew after a save, but not around a refused form: without script its answer would be lost with its key. */}
      <RulesForm key={String(version)} groups={groups} values={{ ...ruleChangesValues(shop.settings.ruleChanges, RULES), baseVersion: String(shop.version) }} />
      <FixedRules rules={fixed} />
    </main>
  );
}

function SoftenedNow({ groups }: { readonly groups: readonly RuleGroup[] }) {
  const softened = groups.flatMap(({ rules }) => rules.filter(({ isSoftened }) => isSoftened));
  if (softened.length === 0) return <p>All rules stand as they are.</p>;
  return (
    <p>
      Softened now:{' '}
      {softened.map(({ id, title }, at) => (
        <Fragment key={id}>
          {at > 0 && '; '}
          <a href={`#rule-${id}`}>{title}</a>
        </Fragment>
      ))}
      .
    </p>
  );
}

function FixedRules({ rules }: { readonly rules: readonly FixedRule[] }) {
  return (
    <section className="section stack" aria-labelledby="fixed">
      <h2 id="fixed">Safety and law</h2>
      <p>These keep people from harm or the shop within the law. A mistake here cannot be put right afterwards, so they stand as they are in every shop.</p>
      <ul className="fixed-rules">
        {rules.map(({ id, title, severityWords, ground }) => (
          <li key={id}>
            <a href={`/rules/${id}`}>{title}</a>
            <span className="quiet-text">
              {ground === 'safety' ? 'Safety' : 'Law'}. {severityWords}.
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
