// Loaded when the hunter begins: the rules, and the schema the check needs, weigh more than all the rest of the form.
export { checkOrderForm, findingsOf, stepOrderForm } from '@/lib/forms';
