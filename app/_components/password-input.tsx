'use client';

import { useState } from 'react';
import type { FieldWiring } from './field';
import './password-input.css';

type PasswordInputProps = {
  readonly wiring: FieldWiring;
  readonly name: string;
  readonly autoComplete: 'current-password' | 'new-password';
};

/** A password that can be shown while typing it: long words on a tablet's keyboard go wrong unseen. */
export function PasswordInput({ wiring, name, autoComplete }: PasswordInputProps) {
  const [shown, setShown] = useState(false);
  return (
    <div className="with-button">
      <input
        {...wiring}
        name={name}
        type={shown ? 'text' : 'password'}
        autoComplete={autoComplete}
        autoCapitalize="none"
        autoCorrect="off"
        spellCheck={false}
        maxLength={256}
      />
      <button className="button plain script-only" type="button" aria-pressed={shown} onClick={() => setShown(!shown)}>
        {shown ? 'Hide' : 'Show'} <span className="visually-hidden">the password</span>
      </button>
    </div>
  );
}
