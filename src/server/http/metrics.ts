/** Counters of what the server does: numbers only, nothing of whom. */
export interface Metrics {
  readonly count: (name: Counter, label?: string, by?: number) => void;
  /** Seconds from the arrival of a delivery to its answer. */
  readonly acknowledged: (seconds: number) => void;
  /** In the text format of Prometheus, version 0.0.4. */
  readonly text: (now: Gauges) => string;
}

export interface Gauges {
  readonly streams: number;
  readonly uptimeSeconds: number;
  readonly memoryBytes: number;
}

const COUNTERS = {
  requests: ['handspike_requests_total', 'Requests answered, by the first figure of the status.', 'status'],
  stored: ['handspike_entries_stored_total', 'Entries answered as stored, repeated ones included.', null],
  refused: ['handspike_entries_refused_total', 'Entries refused, by reason.', 'why'],
  joined: ['handspike_joined_total', 'Passes given out, by kind of seat.', 'seat'],
  wrongCodes: ['handspike_wrong_codes_total', 'Wrong codes and links at the door.', null],
  slowedDown: ['handspike_slowed_down_total', 'Requests that were told to wait.', null],
  events: ['handspike_events_total', 'Events written to listening pages.', null],
} as const;

export type Counter = keyof typeof COUNTERS;

const BOUNDS = [0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5];
const TIMES = 'handspike_acknowledgement_seconds';

export function metrics(): Metrics {
  const counts = new Map<string, number>();
  const buckets = BOUNDS.map(() => 0);
  let [sum, number] = [0, 0];
  const line = (name: Counter, label: string): string => {
    const [series, , labelName] = COUNTERS[name];
    return labelName === null ? series : `${series}{${labelName}="${label}"}`;
  };
  return {
    count: (name, label = '', by = 1) => {
      const key = line(name, label);
      counts.set(key, (counts.get(key) ?? 0) + by);
    },
    acknowledged: (seconds) => {
      sum += seconds;
      number += 1;
      for (const [n, bound] of BOUNDS.entries()) if (seconds <= bound) buckets[n] = (buckets[n] ?? 0) + 1;
    },
    text: ({ streams, uptimeSeconds, memoryBytes }) => {
      const head = (name: string, help: string, type: string): string =>
        `# HELP ${name} ${help}\n# TYPE ${name} ${type}`;
      const gauge = (name: string, help: string, value: number): string =>
        `${head(name, help, 'gauge')}\n${name} ${value}`;
      const ofCounter = (name: Counter): string => {
        const [series, help, labelName] = COUNTERS[name];
        const found = [...counts].filter(([key]) => key === series || key.startsWith(`${series}{`));
        const lines = found.length === 0 && labelName === null ? [[series, 0] as const] : found;
        return [head(series, help, 'counter'), ...lines.map(([key, value]) => `${key} ${value}`)].join('\n');
      };
      const bucket = (bound: string, value: number): string => `${TIMES}_bucket{le="${bound}"} ${value}`;
      return `${[
        ...(Object.keys(COUNTERS) as Counter[]).map(ofCounter),
        head(TIMES, 'From the arrival of a delivery to its answer.', 'histogram'),
        ...BOUNDS.map((bound, n) => bucket(String(bound), buckets[n] ?? 0)),
        bucket('+Inf', number),
        `${TIMES}_sum ${sum}`,
        `${TIMES}_count ${number}`,
        gauge('handspike_streams', 'Pages that listen.', streams),
        gauge('process_resident_memory_bytes', 'Resident memory in bytes.', memoryBytes),
        gauge('handspike_uptime_seconds', 'Seconds since the server started.', uptimeSeconds),
      ].join('\n')}\n`;
    },
  };
}
