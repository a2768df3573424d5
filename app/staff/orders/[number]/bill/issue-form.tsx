'use client';

import { ActionForm } from '@/app/staff/_components/action-form';
import { issueAction } from './actions';

type IssueFormProps = { readonly order: { readonly number: string; readonly version: number }; readonly title: string; readonly total: string };

export function IssueForm({ order, title, total }: IssueFormProps) {
  return (
    <ActionForm action={issueAction} order={order} title={title} className="stack tight">
      {(_, pending) => (
        <>
          <p>
            It gets the next number and stands at <b className="nowrap">{total}</b>. Once issued it cannot be changed, so look over the weights first.
          </p>
          <div className="buttons">
            <button className="button primary large" disabled={pending}>
              Issue the invoice
            </button>
          </div>
        </>
      )}
    </ActionForm>
  );
}
