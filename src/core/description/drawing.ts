/**
 * A setup as neutral geometry in metres, x to the right and y up, in the plane of the machine.
 * `documents` paints it; nothing here knows of pixels, colours or fonts.
 */
export interface Drawing {
  readonly shapes: readonly Shape[];
  /** Sizes that nobody stated: the picture shows how things go together and bears no scale. */
  readonly isSketch?: true;
}

/** One of several pictures of a setup, with a sentence key for its heading. */
export interface Figure {
  readonly title: { readonly key: string; readonly facts: Readonly<Record<string, string | number>> };
  readonly drawing: Drawing;
}

export type Point = readonly [x: number, y: number];

export type Shape =
  /** A solid body: bar, board, block, wedge. */
  | {
      readonly shape: 'body';
      readonly outline: readonly Point[];
      readonly role: Role;
    }
  | {
      readonly shape: 'wheel';
      readonly centre: Point;
      readonly radius: number;
      readonly role: Role;
    }
  /** A hole or peg position with its number on the apparatus. */
  | {
      readonly shape: 'hole';
      readonly centre: Point;
      readonly radius: number;
      readonly number?: number;
      readonly used?: true;
    }
  /** Cord, line or string. */
  | {
      readonly shape: 'line';
      readonly path: readonly Point[];
      /** Where there are two lines, so that they can be told apart. */
      readonly dashed?: true;
      /** A sentence for whoever can't see it. */
      readonly key?: string;
    }
  /** The table top, a floor or a fixed support. */
  | { readonly shape: 'ground'; readonly from: Point; readonly to: Point }
  /** The fulcrum: a pin with its stand below or its hanger above. */
  | {
      readonly shape: 'pivot';
      readonly at: Point;
      readonly stand: 'below' | 'above';
    }
  /** A load that hangs by its hook. */
  | {
      readonly shape: 'load';
      readonly hook: Point;
      readonly label: string;
      readonly mass?: number;
    }
  /**
   * The pull: from the hook, in a direction (radians from +x); its length is the force. Where a hand
   * `pushes`, the arrow ends at what is pushed.
   */
  | {
      readonly shape: 'effort';
      readonly from: Point;
      readonly direction: number;
      readonly newtons: number;
      readonly scale: ScaleHang;
      readonly pushes?: true;
    }
  /** Where the line to another picture leaves this one, with a sentence that names where it goes. */
  | {
      readonly shape: 'link';
      readonly from: Point;
      readonly direction: number;
      readonly key: string;
      readonly facts: Readonly<Record<string, string | number>>;
    }
  /** A dimension as on a workshop drawing, measured between two points. */
  | {
      readonly shape: 'measure';
      readonly from: Point;
      readonly to: Point;
      readonly offset: number;
      readonly metres: number;
    }
  | {
      readonly shape: 'angle';
      readonly at: Point;
      readonly from: number;
      readonly to: number;
      readonly radius: number;
    }
  | {
      readonly shape: 'label';
      readonly at: Point;
      /** The end of the words that stands at the point; their middle where it isn't said. */
      readonly anchor?: 'start' | 'end';
      readonly key: string;
      readonly facts: Readonly<Record<string, string | number>>;
    };

export type Role =
  | 'bar'
  | 'board'
  | 'block'
  | 'cart'
  | 'wheel'
  | 'sheave'
  | 'drum'
  | 'axle'
  | 'screw'
  | 'nut'
  | 'wedge'
  | 'roller'
  | 'frame';
export type ScaleHang = 'hook down' | 'level' | 'along the slope' | 'upside down';
