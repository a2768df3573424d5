// Loaded when the hunter begins to type: the check needs the schema, which is half as large as all the rest of the form.
export { checkOrderForm } from '@/lib/forms';
