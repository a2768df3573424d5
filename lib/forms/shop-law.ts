import { z } from 'zod';
import { LAW_CHOICES, LAW_LIMITS, LAW_PACKS, LAW_POINTS, type LawPoint, type LawReader, type ShopLaw, isChoicePoint, valueWords } from '@/lib/law';
import { parseTemperature, type Result } from '@/lib/units';
import { checkForm, type FormOutcome } from './form-outcome';
import type { ShopSettings } from './shop-settings';
import { lineOf } from './text-fields';
import { tidyLine } from './tidy-text';

const reason = lineOf({ missing: 'Say why this differs from the place, for example who told you and when', longest: 200 });

/** A changed point, or none. */
const changeTo = <T>(value: z.ZodType<T>) => z.object({ value, reason }).optional();

const figure = ({ least, most }: { readonly least: number; readonly most: number }) => z.int().min(least).max(most);

/** The shop's law as it is stored. Settings stored before there was any have no place chosen. */
export const shopLawSchema = z
  .object({
    packId: z.string().max(60),
    changes: z.object({
      sawnBoneFromZone: changeTo(z.enum(LAW_CHOICES.sawnBoneFromZone)),
      spineFromZone: changeTo(z.enum(LAW_CHOICES.spineFromZone)),
      looseBonesFromZone: changeTo(z.enum(LAW_CHOICES.looseBonesFromZone)),
      headFromZone: changeTo(z.enum(LAW_CHOICES.headFromZone)),
      overBorder: changeTo(z.enum(LAW_CHOICES.overBorder)),
      pooling: changeTo(z.enum(LAW_CHOICES.pooling)),
      testWanted: changeTo(z.enum(LAW_CHOICES.testWanted)),
      trichinellaTest: changeTo(z.enum(LAW_CHOICES.trichinellaTest)),
      coldCelsiusTenths: changeTo(figure(LAW_LIMITS.coldCelsiusTenths)),
      keepRecordDays: changeTo(figure(LAW_LIMITS.keepRecordDays)),
    } satisfies Record<LawPoint, z.ZodType>),
  })
  .default(() => ({ packId: 'careful', changes: {} }));

/** How a shop reads temperatures and figures. */
export function lawReader({ unit, locale }: Pick<ShopSettings, 'unit' | 'locale'>): LawReader {
  return { unit: unit === 'lb' ? 'F' : 'C', locale };
}

/** The law as the fields of its form: 'packId', and for each point 'value.<point>' ('' as the place has it) and 'reason.<point>'. */
export function lawFormValues({ packId, changes }: ShopLaw, reader: LawReader): Record<string, string> {
  const values: Record<string, string> = { packId };
  for (const point of LAW_POINTS) {
    const change = changes[point];
    if (change === undefined) continue;
    values[`value.${point}`] = point === 'coldCelsiusTenths' ? valueWords(point, change.value, reader) : String(change.value);
    values[`reason.${point}`] = change.reason;
  }
  return values;
}

/**
 * Reads the form of the law. A point left as the place has it loses its change, and with it the reason it had `before`;
 * a new reason without a value is asked back, and a value without a reason is refused.
 */
export function parseLawForm(
  typed: Readonly<Record<string, string>>,
  { before, reader }: { readonly before: ShopLaw; readonly reader: LawReader },
): FormOutcome<ShopLaw> {
  const packId = typed['packId'] ?? '';
  const fieldErrors: Record<string, string> = {};
  const changes: Partial<Record<LawPoint, TypedChange>> = {};
  if (!LAW_PACKS.some(({ id }) => id === packId)) fieldErrors['packId'] = 'Choose a place from the list';
  for (const point of LAW_POINTS) {
    const text = tidyLine(typed[`value.${point}`] ?? '');
    const why = reason.safeParse(typed[`reason.${point}`] ?? '');
    if (text === '') {
      const isNew = typed[`reason.${point}`]?.trim() && why.data !== before.changes[point]?.reason;
      if (isNew) fieldErrors[`value.${point}`] = 'Say what holds instead, or empty the reason';
      continue;
    }
    const value = readValue(point, text, reader);
    if (!value.ok) fieldErrors[`value.${point}`] = value.message;
    if (!why.success) fieldErrors[`reason.${point}`] = why.error.issues[0]?.message ?? '';
    if (value.ok && why.success) changes[point] = { value: value.value, reason: why.data };
  }
  if (Object.keys(fieldErrors).length > 0) return { ok: false, formErrors: [], fieldErrors };
  return checkForm(shopLawSchema, { packId, changes });
}

type TypedChange = { readonly value: string | number; readonly reason: string };

/** The value of a point as typed: one of its list, a temperature in either unit, a number of days. */
function readValue(point: LawPoint, text: string, reader: LawReader): Result<string | number> {
  if (isChoicePoint(point)) {
    return LAW_CHOICES[point].some((choice) => choice === text) ? { ok: true, value: text } : { ok: false, message: 'Choose one from the list' };
  }
  const { least, most } = LAW_LIMITS[point];
  const read = point === 'coldCelsiusTenths' ? parseTemperature(text, reader) : readDays(text);
  if (!read.ok || (read.value >= least && read.value <= most)) return read;
  return { ok: false, message: `Enter ${valueWords(point, least, reader)} to ${valueWords(point, most, reader)}` };
}

function readDays(text: string): Result<number> {
  return /^\d{1,6}$/.test(text) ? { ok: true, value: Number(text) } : { ok: false, message: 'Enter a whole number of days, for example 365' };
}
