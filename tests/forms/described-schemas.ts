import { Ajv2020 } from 'ajv/dist/2020.js';
import { type PlanDesk, planOpenApi } from '@/lib/forms';

type Problems = (value: unknown) => string | null;

/** What the schemas of the description, read as JSON Schema 2020-12 by a validator that is not ours, have against a value; null: nothing. */
export function describedSchemas(desk: PlanDesk): { readonly requestProblems: Problems; readonly answerProblems: Problems; readonly problemsProblems: Problems } {
  return problemsBy(JSON.parse(JSON.stringify(planOpenApi(desk))));
}

/** The same of a description that was read from somewhere. */
export function problemsBy(described: Readonly<Record<string, unknown>>): ReturnType<typeof describedSchemas> {
  const ajv = new Ajv2020({ strict: true, allErrors: true, strictTypes: false });
  // A description of an interface is itself no schema: its parts are found by their place in it.
  ajv.addVocabulary(Object.keys(described));
  ajv.addSchema(described, 'openapi');
  const by = (name: string): Problems => {
    const validate = ajv.getSchema(`openapi#/components/schemas/${name}`);
    if (!validate) throw new Error(`The description has no ${name}`);
    return (value) => (validate(value) === true ? null : ajv.errorsText(validate.errors));
  };
  return { requestProblems: by('PlanRequest'), answerProblems: by('PlanAnswer'), problemsProblems: by('PlanProblems') };
}
