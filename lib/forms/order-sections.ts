/** Sections of the form, in its order. */
export const ORDER_SECTIONS = ['animal', 'cuts', 'rest', 'keep', 'who'] as const;
export type OrderSection = (typeof ORDER_SECTIONS)[number];

/** Id of a section's heading on the page; a field of the same name has its own. */
export function sectionId(section: OrderSection): string {
  return `section-${section}`;
}
