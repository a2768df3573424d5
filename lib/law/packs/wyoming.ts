import { statePackOf } from './any-state';

export const wyoming = statePackOf({
  id: 'us-wyoming',
  place: 'Wyoming',
  read: {},
  remarks: {
    coldCelsiusTenths: 'For ageing clean carcasses Wyoming advises 34 to 37 °F (1 to 3 °C).',
    keepRecordDays: 'An order nobody collects waits 45 days, then has a notice and 10 days from its postmark, and is reported to the warden.',
  },
});
