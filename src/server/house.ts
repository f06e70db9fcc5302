import type { Journal } from '../store/journal.ts';
import type { Desk } from './desk/desk.ts';
import type { Attempts } from './doors/attempts.ts';
import type { Pace } from './doors/pace.ts';
import type { Passes } from './doors/passes.ts';
import type { VisitIndex } from './entries/visit-index.ts';
import type { Metrics } from './http/metrics.ts';
import type { StreamHub } from './live/stream-hub.ts';
import type { VisitPlan } from './visits/visit-plan.ts';
import type { Visits } from './visits/visits.ts';

/** Everything that the routes work with. */
export interface House {
  readonly journal: Journal;
  readonly visits: Visits;
  readonly passes: Passes;
  readonly desk: Desk;
  readonly hub: StreamHub;
  readonly index: VisitIndex;
  readonly metrics: Metrics;
  readonly attempts: Attempts;
  readonly pace: { readonly ofAddress: Pace; readonly ofPass: Pace };
  readonly clock: () => number;
  readonly started: number;
  readonly isStopping: () => boolean;
  /** Where the pages are opened, without a path; known once the server listens. */
  readonly addresses: () => readonly string[];
  /** Groups, tables and setups of a visit, as it stands; known until it is prepared anew. */
  readonly plan: (visit: string) => Promise<VisitPlan>;
  /** Told when a visit is being prepared; what is shown of it waits for that. */
  readonly preparing: (visit: string, ready: Promise<void>) => void;
  readonly ready: (visit: string) => Promise<void>;
  readonly forgetPlan: (visit: string) => void;
}
