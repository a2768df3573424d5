import type { AgeClass, DeliveryForm, Sex, SpeciesId } from '@/lib/carcass';
import type { ArrivalFormValues } from '@/lib/forms';
import type { OrderState } from '@/lib/orders';
import { type Chance } from './chance';
import { counties, zoneCounty } from './shop';
import type { WishName } from './wishes';

/** What one animal of the season is, what its hunter wants, and how far it has come. */
export type Story = {
  readonly speciesId: SpeciesId;
  readonly sex: Sex;
  readonly ageClass: AgeClass;
  /** Pounds on the counter's scale, gutted with the hide on unless `scaledAs` says otherwise. */
  readonly pounds: number;
  readonly scaledAs?: 'hanging' | 'boneless';
  /** What the hunter wrote; nothing where they did not know. */
  readonly guess?: { readonly weight: string; readonly basis: string };
  readonly form?: DeliveryForm;
  readonly filletsOut?: boolean;
  readonly where?: string;
  /** What the hunter said of the disease zone; 'no' where nothing is told. */
  readonly toldZone?: 'yes' | 'no' | 'unsure';
  readonly wish: WishName;
  readonly until: OrderState;
  readonly bookedDaysAgo: number;
  /** Days from the rail to the bench. */
  readonly agedDays?: number;
  readonly arrival?: Partial<Pick<ArrivalFormValues, 'note' | 'temperature' | 'sampleNumber'>> & {
    readonly wounds?: Readonly<Record<string, string>>;
    readonly missing?: readonly string[];
    readonly conditions?: readonly string[];
  };
  /** A disease sample is taken; its result comes before the knife where the story goes that far. */
  readonly tested?: 'stays-pending' | 'comes-back-negative';
  /** Who answers what the counter asks, with which of the options; nobody yet where it is left out. */
  readonly answered?: { readonly by: 'hunter' | 'counter'; readonly option: number };
  /** Wishes that replaced the first one before the knife. */
  readonly changes?: readonly { readonly by: 'hunter' | 'counter'; readonly wish: WishName; readonly reason: string }[];
  /** How it is paid once it is ready; unpaid where it is left out. A collected animal is always paid. */
  readonly paid?: 'whole' | 'part' | 'in-two';
};

/** The animals worth telling of, each for something a shop meets. */
export const toldStories: readonly Story[] = [
  // Collected.
  { speciesId: 'elk', sex: 'male', ageClass: 'adult', pounds: 512, guess: { weight: '750', basis: 'live' }, where: 'Hask Lake unit 12', wish: 'wholeMenu', until: 'collected', bookedDaysAgo: 42, agedDays: 8, paid: 'in-two', arrival: { temperature: '36', note: 'Four men and a winch. Two gambrels.' }, answered: { by: 'counter', option: 0 } },
  { speciesId: 'roe-deer', sex: 'female', ageClass: 'young', pounds: 19.5, guess: { weight: '24', basis: 'live' }, where: 'Quillan County', wish: 'smallAndSimple', until: 'collected', bookedDaysAgo: 41, paid: 'whole', answered: { by: 'hunter', option: 0 } },
  { speciesId: 'white-tailed-deer', sex: 'male', ageClass: 'adult', pounds: 168, wish: 'mount', until: 'collected', bookedDaysAgo: 40, paid: 'whole', arrival: { note: 'Cape marked with a blue ribbon.' } },
  { speciesId: 'red-deer', sex: 'male', ageClass: 'adult', pounds: 231, guess: { weight: '230', basis: 'field-dressed' }, where: 'Thornby County', wish: 'roasts', until: 'collected', bookedDaysAgo: 37, agedDays: 8, paid: 'whole' },
  { speciesId: 'white-tailed-deer', sex: 'female', ageClass: 'adult', pounds: 104, where: zoneCounty, toldZone: 'yes', wish: 'burgers', until: 'collected', bookedDaysAgo: 39, tested: 'comes-back-negative', arrival: { sampleNumber: 'OS-26-0117' }, paid: 'in-two' },
  { speciesId: 'mule-deer', sex: 'male', ageClass: 'adult', pounds: 158, form: 'skinned', scaledAs: 'hanging', wish: 'leftAndRight', until: 'collected', bookedDaysAgo: 33, paid: 'whole' },
  { speciesId: 'white-tailed-deer', sex: 'female', ageClass: 'yearling', pounds: 91, wish: 'rolledShoulders', until: 'collected', bookedDaysAgo: 30, arrival: { wounds: { 'left-shoulder': 'heavy' }, conditions: ['gut-shot', 'dirty'] }, answered: { by: 'hunter', option: 0 }, paid: 'whole' },
  // Ready.
  { speciesId: 'white-tailed-deer', sex: 'male', ageClass: 'adult', pounds: 149, wish: 'steaksAndSausage', until: 'ready', bookedDaysAgo: 24, paid: 'part' },
  { speciesId: 'elk', sex: 'female', ageClass: 'adult', pounds: 338, where: 'Hask Lake unit 12', wish: 'wholeMenu', until: 'ready', bookedDaysAgo: 19, agedDays: 9, answered: { by: 'hunter', option: 0 } },
  { speciesId: 'white-tailed-deer', sex: 'female', ageClass: 'adult', pounds: 117, wish: 'porkFat', until: 'ready', bookedDaysAgo: 22 },
  { speciesId: 'red-deer', sex: 'female', ageClass: 'adult', pounds: 148, where: 'Thornby County', wish: 'leftAndRight', until: 'ready', bookedDaysAgo: 16, paid: 'whole' },
  { speciesId: 'white-tailed-deer', sex: 'female', ageClass: 'adult', pounds: 63.5, form: 'boned-out', scaledAs: 'boneless', wish: 'grindItAll', until: 'ready', bookedDaysAgo: 15, paid: 'part' },
  // Packed.
  { speciesId: 'white-tailed-deer', sex: 'male', ageClass: 'yearling', pounds: 121, wish: 'usual', until: 'packed', bookedDaysAgo: 12, changes: [{ by: 'hunter', wish: 'steaksAndSausage', reason: '' }, { by: 'counter', wish: 'usual', reason: 'Called: no sausage after all, back to the usual cuts' }] },
  { speciesId: 'roe-deer', sex: 'male', ageClass: 'adult', pounds: 41, where: 'Quillan County', wish: 'roasts', until: 'packed', bookedDaysAgo: 11, answered: { by: 'hunter', option: 0 } },
  { speciesId: 'mule-deer', sex: 'female', ageClass: 'adult', pounds: 108, wish: 'noPork', until: 'packed', bookedDaysAgo: 11 },
  // On the bench.
  { speciesId: 'white-tailed-deer', sex: 'male', ageClass: 'adult', pounds: 155, wish: 'skullPlate', until: 'on-the-bench', bookedDaysAgo: 9 },
  { speciesId: 'elk', sex: 'male', ageClass: 'yearling', pounds: 297, where: 'Hask Lake unit 12', wish: 'wholeMenu', until: 'on-the-bench', bookedDaysAgo: 10, agedDays: 8, answered: { by: 'counter', option: 0 } },
  { speciesId: 'white-tailed-deer', sex: 'female', ageClass: 'adult', pounds: 110, filletsOut: true, wish: 'bonesForBroth', until: 'on-the-bench', bookedDaysAgo: 8 },
  // Hanging, some of them with something to ask.
  { speciesId: 'white-tailed-deer', sex: 'female', ageClass: 'adult', pounds: 96, guess: { weight: '320', basis: 'live' }, wish: 'chopsByTheBoxful', until: 'hanging', bookedDaysAgo: 6 },
  { speciesId: 'white-tailed-deer', sex: 'male', ageClass: 'adult', pounds: 143, wish: 'rolledShoulders', until: 'hanging', bookedDaysAgo: 5, arrival: { wounds: { 'right-shoulder': 'heavy', 'right-ribs': 'light' }, note: 'Through the right shoulder.' } },
  { speciesId: 'white-tailed-deer', sex: 'female', ageClass: 'adult', pounds: 113, wish: 'usual', until: 'hanging', bookedDaysAgo: 5, arrival: { missing: ['left-fillet', 'right-fillet'], note: 'Tenderloins taken out in the field.' } },
  { speciesId: 'mule-deer', sex: 'male', ageClass: 'yearling', pounds: 101, wish: 'nothingSaid', until: 'hanging', bookedDaysAgo: 4 },
  { speciesId: 'red-deer', sex: 'female', ageClass: 'young', pounds: 74, where: 'Thornby County', wish: 'leftAndRight', until: 'hanging', bookedDaysAgo: 4, arrival: { wounds: { 'left-haunch': 'lost' } }, answered: { by: 'hunter', option: 0 }, changes: [{ by: 'hunter', wish: 'leftAndRight', reason: '' }] },
  { speciesId: 'roe-deer', sex: 'female', ageClass: 'adult', pounds: 37.5, where: 'Quillan County', wish: 'smallAndSimple', until: 'hanging', bookedDaysAgo: 3 },
  { speciesId: 'white-tailed-deer', sex: 'male', ageClass: 'adult', pounds: 171, wish: 'mount', until: 'hanging', bookedDaysAgo: 3, changes: [{ by: 'hunter', wish: 'skullPlate', reason: '' }] },
  // On hold: the test is out, or nobody has been reached.
  { speciesId: 'white-tailed-deer', sex: 'male', ageClass: 'adult', pounds: 139, where: zoneCounty, toldZone: 'yes', wish: 'burgers', until: 'on-hold', bookedDaysAgo: 7, tested: 'stays-pending', arrival: { sampleNumber: 'OS-26-0204', temperature: '37' } },
  { speciesId: 'white-tailed-deer', sex: 'female', ageClass: 'adult', pounds: 106, where: zoneCounty, toldZone: 'yes', wish: 'porkFat', until: 'on-hold', bookedDaysAgo: 5, tested: 'stays-pending', arrival: { sampleNumber: 'OS-26-0209' } },
  { speciesId: 'mule-deer', sex: 'male', ageClass: 'adult', pounds: 162, where: '', toldZone: 'unsure', wish: 'bonesForBroth', until: 'on-hold', bookedDaysAgo: 4, tested: 'stays-pending', arrival: { sampleNumber: 'OS-26-0213', note: 'Shot past the county line: from the zone after all.' } },
  // Received, not yet on the rail.
  { speciesId: 'white-tailed-deer', sex: 'female', ageClass: 'young', pounds: 58, wish: 'grindItAll', until: 'received', bookedDaysAgo: 1, arrival: { conditions: ['wet', 'warm'], temperature: '52' } },
  { speciesId: 'elk', sex: 'female', ageClass: 'adult', pounds: 351, where: 'Hask Lake unit 12', wish: 'steaksAndSausage', until: 'received', bookedDaysAgo: 1 },
  { speciesId: 'white-tailed-deer', sex: 'male', ageClass: 'adult', pounds: 88, form: 'quartered', scaledAs: 'hanging', wish: 'steaksAndSausage', until: 'received', bookedDaysAgo: 1 },
  // Booked, and thought better of.
  { speciesId: 'elk', sex: 'male', ageClass: 'adult', pounds: 430, guess: { weight: '430', basis: 'field-dressed' }, where: 'Hask Lake unit 12', wish: 'wholeMenu', until: 'booked', bookedDaysAgo: 2 },
  { speciesId: 'roe-deer', sex: 'unknown', ageClass: 'unknown', pounds: 38, where: 'Quillan County', wish: 'smallAndSimple', until: 'booked', bookedDaysAgo: 1 },
  { speciesId: 'white-tailed-deer', sex: 'male', ageClass: 'adult', pounds: 140, wish: 'mount', until: 'booked', bookedDaysAgo: 1, changes: [{ by: 'hunter', wish: 'skullPlate', reason: '' }] },
  { speciesId: 'red-deer', sex: 'male', ageClass: 'adult', pounds: 220, where: 'Thornby County', wish: 'nothingSaid', until: 'booked', bookedDaysAgo: 3 },
  { speciesId: 'white-tailed-deer', sex: 'female', ageClass: 'unknown', pounds: 100, wish: 'usual', until: 'cancelled', bookedDaysAgo: 18 },
  { speciesId: 'mule-deer', sex: 'unknown', ageClass: 'unknown', pounds: 120, wish: 'grindItAll', until: 'cancelled', bookedDaysAgo: 6 },
];

/** How many ordinary animals have come how far, and when their orders were sent. */
const ordinary: readonly { readonly until: OrderState; readonly count: number; readonly from: number; readonly to: number }[] = [
  { until: 'collected', count: 16, from: 17, to: 38 },
  { until: 'ready', count: 5, from: 12, to: 16 },
  { until: 'packed', count: 3, from: 10, to: 11 },
  { until: 'hanging', count: 6, from: 3, to: 5 },
  { until: 'booked', count: 5, from: 1, to: 4 },
];

/** Ordinary animals: what a shop sees most days, drawn by chance. */
export function ordinaryStories(chance: Chance): readonly Story[] {
  const everyday: readonly WishName[] = ['usual', 'grindItAll', 'steaksAndSausage', 'burgers', 'porkFat', 'noPork', 'usual', 'leftAndRight'];
  return ordinary.flatMap(({ until, count, from, to }) =>
    Array.from({ length: count }, (_, at): Story => {
      const sex = chance.pick(['male', 'female', 'female'] as const);
      const speciesId = at % 4 === 3 ? 'mule-deer' : 'white-tailed-deer';
      const middle = (sex === 'male' ? 142 : 108) + (speciesId === 'mule-deer' ? 6 : 0);
      return {
        speciesId,
        sex,
        ageClass: 'adult',
        pounds: middle + chance.whole(-18, 18) + chance.pick([0, 0.5]),
        where: chance.pick(counties),
        wish: chance.pick(everyday),
        until,
        bookedDaysAgo: chance.whole(from, to),
        agedDays: chance.whole(5, 7),
        ...(until === 'collected' && { paid: chance.pick(['whole', 'whole', 'in-two'] as const) }),
        ...(until === 'ready' && chance.next() < 0.5 && { paid: 'part' }),
      };
    }),
  );
}
