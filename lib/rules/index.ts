export { CAUTIONS, DEFERENCE, type Caution, type CautionId } from './cautions';
export { findAll, hasStop } from './find-all';
export { afterEdits } from './mend';
export { RULE_EXAMPLES } from './examples';
export { RULE_REASONS } from './reasons';
export { RULES } from './registry';
export {
  SEVERITIES,
  STAGES,
  TEST_STATES,
  type Circumstances,
  type Finding,
  type FindingPlace,
  type Rule,
  type RuleExamples,
  type RuleReason,
  type RuledOrder,
  type Severity,
  type Stage,
  type Suggestion,
  type TestState,
} from './rule';
