import type { PlanProblem } from '@/lib/forms';

/** Answers another program with JSON that nobody keeps. */
export function jsonAnswer(value: unknown, { status = 200, headers = {} }: { readonly status?: number; readonly headers?: Readonly<Record<string, string>> } = {}): Response {
  return new Response(JSON.stringify(value), {
    status,
    headers: { 'content-type': 'application/json; charset=utf-8', 'cache-control': 'no-store', 'x-content-type-options': 'nosniff', ...headers },
  });
}

/** Refuses with what is wrong, each mistake at its path. */
export function jsonRefusal(status: number, errors: readonly PlanProblem[], headers: Readonly<Record<string, string>> = {}): Response {
  return jsonAnswer({ errors }, { status, headers });
}

/** A handler for every method that a route has not: 405 and the one it has. */
export function refusingMethods(allow: string, message: string): () => Response {
  return () => jsonRefusal(405, [{ path: '', message }], { allow });
}
