import { mayPlan } from '@/lib/auth/plan-throttle';
import { jsonAnswer, jsonRefusal, refusingMethods } from '@/lib/exchange/json-answer';
import { readJsonBody } from '@/lib/exchange/read-json';
import { answerPlanRequest } from '@/lib/forms';
import { planDesk } from '@/lib/workflows/plan-desk';

/** The plan of one animal for another program: computed, and nothing of it kept. */
export async function POST(request: Request): Promise<Response> {
  const wait = await mayPlan(request.headers);
  if (wait) return jsonRefusal(429, [{ path: '', message: wait.message }], { 'retry-after': String(wait.seconds) });
  const body = await readJsonBody(request);
  if (!body.ok) return jsonRefusal(body.status, [{ path: '', message: body.message }]);
  const answer = answerPlanRequest(body.value, await planDesk());
  return answer.ok ? jsonAnswer(answer.value) : jsonRefusal(400, answer.errors);
}

const refused = refusingMethods('POST', 'Send this with POST. GET /api/openapi.json describes it.');
export { refused as DELETE, refused as GET, refused as HEAD, refused as OPTIONS, refused as PATCH, refused as PUT };
