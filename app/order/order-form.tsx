'use client';

import { FormProvider, useForm } from 'react-hook-form';
import { useActionState, useMemo, useRef, useState, type ReactNode, type SubmitEvent } from 'react';
import type { DrawnShapes } from '@/app/_components/carcass-drawing';
import { ErrorSummary } from '@/app/_components/error-summary';
import { blankOrderForm, openedForm, readOrderForm, type OrderFormState, type OrderFormValues } from '@/lib/forms';
import type { HunterShop } from '@/lib/workflows/hunter-orders';
import { AS_IT_STANDS, AsItStandsButton, BaseFields, ChangedMeanwhile } from './as-it-stands';
import { CheckAnswers } from './check-answers';
import { dropDraft, freshFormKey } from './draft';
import { EditForm } from './edit-form';
import { FormWorldProvider } from './form-context';
import { SendingNotice } from './send-bar';
import { typedIn } from './typed-before';
import { useBrain } from './use-brain';
import { useBackFromCheck, useDraftAtFirst, useOnFirstTouch, useStandAt, useTypedBefore } from './use-form-places';
import { useSending, type OrderFormAction } from './use-sending';

type OrderFormProps = {
  readonly shop: HunterShop;
  /** The lines of the carcass. */
  readonly shapes: DrawnShapes;
  readonly opened: OrderFormState;
  readonly action: OrderFormAction;
  /** Under which name a draft is kept on the phone. */
  readonly draftName: string;
  readonly title: string;
  readonly words: { readonly send: string; readonly after: string };
  /** Drawn above the form while it is filled in. */
  readonly header: ReactNode;
  /** Fields that go along: which order is changed, and why. */
  readonly children?: ReactNode;
};

const FORM_ID = 'order-form';
const typedBeforeScript = () => typedIn(FORM_ID);

/** Steps taken on the phone know nothing of the order behind the form. */
function onBase(next: OrderFormState, before: OrderFormState): OrderFormState {
  return { ...next, base: next.base ?? before.base };
}

/**
 * The hunter's form, with and without script. Every button is a submit with an intent. Without script the server answers
 * with the next state; with script the same functions answer on the phone, and only sending goes to the server.
 */
export function OrderForm({ shop, shapes, opened, action, draftName, title, words, header, children }: OrderFormProps) {
  const [fromServer, formAction] = useActionState(action, opened);
  const [{ state, drawn, cutsDrawn }, setShown] = useState({ state: fromServer, drawn: 0, cutsDrawn: 0 });
  const [typed] = useState(typedBeforeScript);
  const live = useForm<OrderFormValues>({ defaultValues: fromServer.values });
  const [isRestored, setIsRestored] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const { brain, loadBrain } = useBrain();
  const world = useMemo(() => ({ shop, shapes, state, brain, loadBrain }), [shop, shapes, state, brain, loadBrain]);

  function show(next: OrderFormState) {
    if (next.step === 'check' && state.step !== 'check') window.history.pushState(null, '', '#check');
    live.reset(next.values);
    setShown((now) => ({ ...now, state: onBase(next, now.state), drawn: now.drawn + 1 }));
  }

  /** Where only lines were added or taken off, and the usual way said what becomes of the others, the rest of the form stays as it stands on the screen. */
  function showLines(next: OrderFormState) {
    live.setValue('lines', next.values.lines);
    live.setValue('rest', next.values.rest);
    setShown((now) => ({ ...now, state: onBase(next, now.state), cutsDrawn: now.cutsDrawn + 1 }));
  }

  const { sending, send, stop } = useSending(action, (answer) => {
    if (answer.sentTo === null) return show(answer);
    dropDraft(draftName);
    // Takes the place of the check page: the back button must not lead to a form that has been sent.
    window.location.replace(answer.sentTo);
  });

  /** Any button but sending. What is typed is read once the phone can answer, so that two quick taps build on each other. */
  async function step(intent: string, on: HTMLFormElement, data: FormData) {
    const onPhone = brain ?? (await loadBrain());
    const values = readOrderForm(new FormData(on).entries());
    if (!onPhone) return send(openedForm(values), data);
    if (intent === 'check') return show(onPhone.checkOrderForm(values, shop));
    const next = onPhone.stepOrderForm(values, intent, state.step, shop);
    if (/^(add|remove|usual)\b/.test(intent)) showLines(next);
    else show(next);
  }

  function onSubmit(event: SubmitEvent<HTMLFormElement>) {
    event.preventDefault();
    const data = new FormData(event.currentTarget);
    const { submitter } = event.nativeEvent;
    const intent = submitter instanceof HTMLButtonElement ? submitter.value : 'refresh';
    if (intent === 'refresh') return;
    data.set('intent', intent);
    data.set('scripted', 'yes');
    if (intent === 'send' || intent === AS_IT_STANDS) return send(openedForm(readOrderForm(data.entries())), data);
    stop();
    void step(intent, event.currentTarget, data);
  }

  function startAfresh() {
    dropDraft(draftName);
    setIsRestored(false);
    show(openedForm(blankOrderForm(freshFormKey())));
  }

  useTypedBefore(typed, (values) => live.reset(values, { keepDefaultValues: true, keepFieldsRef: true }));
  useDraftAtFirst(draftName, fromServer === opened, (values) => {
    setIsRestored(true);
    show(openedForm(values));
  });
  useBackFromCheck(() => {
    if (state.step === 'check' && form.current) show(openedForm(readOrderForm(new FormData(form.current).entries())));
  });
  useStandAt(state, drawn + cutsDrawn);
  useOnFirstTouch(form, loadBrain);

  const errors = useMemo(
    () => Object.entries(state.fieldErrors).map(([path, message]) => (path === '' ? { message } : { id: path, message })),
    [state.fieldErrors],
  );
  return (
    <FormWorldProvider value={world}>
      <title>{`${errors.length > 0 ? 'Error: ' : ''}${state.step === 'check' ? 'Check your answers' : title} · ${shop.name}`}</title>
      {state.step === 'edit' && header}
      {isRestored && state.step === 'edit' && (
        <div className="notice" role="status">
          <p>What you filled in before is back. It is saved on this phone and has not been sent yet.</p>
          <button type="button" className="button" onClick={startAfresh}>
            Start with an empty form
          </button>
        </div>
      )}
      <ErrorSummary errors={errors} />
      {state.isStale && <AsItStandsButton formId={FORM_ID} />}
      {state.changedMeanwhile && <ChangedMeanwhile answers={state.changedMeanwhile} />}
      <form ref={form} id={FORM_ID} action={formAction} onSubmit={onSubmit} noValidate>
        {/* The first button answers the enter key: it only works the forecast out. */}
        <button type="submit" name="intent" value="refresh" className="visually-hidden" tabIndex={-1} aria-hidden="true">
          Work it out
        </button>
        {children}
        <BaseFields base={state.base} />
        <FormProvider {...live}>
          {state.step === 'check' ? (
            <CheckAnswers values={state.values} sending={sending} words={words} />
          ) : (
            <EditForm key={drawn} draftName={draftName} cutsDrawn={cutsDrawn} />
          )}
        </FormProvider>
        <SendingNotice sending={sending} />
      </form>
    </FormWorldProvider>
  );
}
