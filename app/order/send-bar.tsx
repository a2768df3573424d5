'use client';

/** Where the sending stands. Waiting: no answer came, and it is tried again by itself. */
export type Sending = { readonly kind: 'idle' | 'sending' | 'waiting' | 'outdated' };

type SendBarProps = {
  readonly canSend: boolean;
  readonly sending: Sending;
  readonly words: { readonly send: string; readonly after: string };
};

export function SendBar({ canSend, sending, words }: SendBarProps) {
  const isBusy = sending.kind === 'sending';
  return (
    <div className="stack tight">
      <div className="buttons">
        {canSend && (
          <button type="submit" name="intent" value="send" className="button primary large" aria-disabled={isBusy || undefined}>
            {isBusy ? 'Sending' : sending.kind === 'waiting' ? 'Send again now' : words.send}
          </button>
        )}
        <button type="submit" name="intent" value="change:cuts" className={canSend ? 'button plain' : 'button primary large'}>
          Go back and change
        </button>
      </div>
      {canSend && <p className="quiet-text">{words.after}</p>}
    </div>
  );
}

/** What became of the sending, while no answer has come. */
export function SendingNotice({ sending }: { readonly sending: Sending }) {
  return (
    <div role="status">
      {sending.kind === 'waiting' && (
        <p className="notice sending-notice">
          No answer from the shop: the signal may be too weak. Nothing is lost. It is saved on this phone and tried again by itself
          while this page is open; sent twice, it is still one order.
        </p>
      )}
      {sending.kind === 'outdated' && (
        <p className="notice sending-notice">
          The shop&rsquo;s program was updated while this page was open. What you filled in is saved on this phone: load the page
          again, then send.
        </p>
      )}
    </div>
  );
}
