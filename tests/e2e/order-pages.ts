import type { Locator, Page } from 'playwright-core';

/** What the journeys do on the hunter's form, by the words a hunter reads. */
export const onForm = (page: Page) => ({
  choose: (question: string, answer: string | RegExp) =>
    page.getByRole('group', { name: question, exact: true }).getByLabel(answer, { exact: true }).check(),
  add: (target: string) => page.getByRole('button', { name: `Add ${target}`, exact: true }).click(),
  line: (name: string): Locator => page.getByRole('group', { name, exact: true }),
});

/** Fills in a white-tailed buck with the usual answers, so that a journey can go on to what it is about. */
export async function tellOfABuck(page: Page): Promise<void> {
  const form = onForm(page);
  await form.choose('Which animal is it?', 'White-tailed deer');
  await form.choose('Is it male or female?', /^(Buck|Male)/);
  await form.choose('How old is it?', 'Older');
  await page.getByLabel('What does it weigh?').fill('140');
  await page.getByLabel('Which weight is that?').selectOption('field-dressed');
  await form.choose('How will you bring it in?', /Whole, gutted, hide on/);
  await page.getByLabel('Where was it taken?').fill('Alder County');
  await form.choose('Is that in a disease zone?', 'No');
}

export async function tellWhoYouAre(page: Page, name = 'Ada Thorn'): Promise<void> {
  await page.getByLabel('Your name').fill(name);
  await page.getByLabel('Phone number').fill('555 0123');
}
