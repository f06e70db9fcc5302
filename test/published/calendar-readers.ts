import ICAL from 'ical.js';
import { convertIcsCalendar } from 'ts-ics';

/** An event as somebody else's program understands it. */
export interface ReadEvent {
  readonly uid: string;
  readonly summary: string;
  readonly description: string;
  /** As written: local, without a zone. */
  readonly start: string;
  readonly minutes: number;
}

/** Read by `ical.js`. */
export function readByIcalJs(text: string): readonly ReadEvent[] {
  const calendar = new ICAL.Component(ICAL.parse(text) as never);
  return calendar.getAllSubcomponents('vevent').map((component) => {
    const event = new ICAL.Event(component);
    return {
      uid: event.uid,
      summary: event.summary,
      description: event.description ?? '',
      start: event.startDate.toString(),
      minutes: event.endDate.subtractDate(event.startDate).toSeconds() / 60,
    };
  });
}

/** Read by `ts-ics`, which gives a floating time as if it were UTC. */
export function readByTsIcs(text: string): readonly ReadEvent[] {
  return (convertIcsCalendar(undefined, text).events ?? []).map(
    ({ uid, summary, description, start, ...rest }) => {
      if (!('end' in rest) || !rest.end) throw new Error(`${uid} has no end`);
      return {
        uid,
        summary,
        description: description ?? '',
        start: start.date.toISOString().slice(0, 19),
        minutes: (rest.end.date.getTime() - start.date.getTime()) / 60_000,
      };
    },
  );
}
