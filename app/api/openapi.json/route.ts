import { jsonAnswer, refusingMethods } from '@/lib/exchange/json-answer';
import { planOpenApi } from '@/lib/forms';
import { planDesk } from '@/lib/workflows/plan-desk';

/** The description of what other programs can ask, with this shop's species. */
export async function GET(): Promise<Response> {
  return jsonAnswer(planOpenApi(await planDesk()));
}

const refused = refusingMethods('GET, HEAD', 'Read this with GET.');
export { refused as DELETE, refused as OPTIONS, refused as PATCH, refused as POST, refused as PUT };
