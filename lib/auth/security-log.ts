type SecurityEvent = 'sign-in refused' | 'sign-in has to wait' | 'order has to wait' | 'set-up code refused' | 'page refused' | 'action refused';

/** Writes one line to the server's output: what was refused, to whom, when. Never a password, never what somebody mistyped. */
export function logSecurity(event: SecurityEvent, details: Readonly<Record<string, string | null>>): void {
  console.warn(JSON.stringify({ at: new Date().toISOString(), event, ...details }));
}
