export { CAUTIONS, DEFERENCE, type Caution, type CautionId } from './cautions';
export { findAll, hasStop } from './find-all';
export { afterEdits } from './mend';
export { RULE_EXAMPLES } from './examples';
export { RULE_REASONS } from './reasons';
export { RULES } from './registry';
export {
  FINDING_FIELDS,
  PLAIN_CIRCUMSTANCES,
  PLAIN_TERMS,
  RULE_TOPICS,
  SEVERITIES,
  STAGES,
  TEST_STATES,
  type Circumstances,
  type Finding,
  type FindingField,
  type FindingPlace,
  type ReadWeights,
  type Rule,
  type RuleExamples,
  type RuleReason,
  type RuleTopic,
  type RuledOrder,
  type Severity,
  type ShopTerms,
  type Stage,
  type Suggestion,
  type TestState,
} from './rule';
export { SOFTER_SEVERITIES, softenedTo, softerChoices, type RuleChange, type RuleChanges } from './softening';
