import * as portable from '../../quantity/portable-math';
import {
  added,
  type Convolution,
  convolution,
  convolve,
  halved,
  type Planes,
  pooled,
  Weights,
} from '../4-limbs/network';
import { shares, weighed } from '../4-limbs/trunk';
import { weightsIn } from '../4-limbs/weights';
import {
  bodyGrid,
  mouthGrid,
  patchChannels,
  type SectorGrid,
  type SectorPatch,
  sectorsOf,
} from './sector-patch';
import trained from './weights.json';

/** Where a line round a bore is seen, sector by sector, as probability over the patch's rows:
 *  shares[sector·rows + row]. */
export interface LineBelief {
  readonly shares: Float64Array;
}

/** What the mouth's network tells apart: the rim, where face and bore meet; a circle as wide as the crests are, about
 *  the same middle in the same plane; the outer edge of the face. */
export interface MouthBelief {
  readonly rim: LineBelief;
  readonly crests: LineBelief;
  readonly outer: LineBelief;
  /** Logarithm of the odds that this is a mouth. */
  readonly odds: number;
}

const lines = { mouth: 3, body: 1 } as const;
type Part = keyof typeof lines;
const grids: Readonly<Record<Part, SectorGrid>> = { mouth: mouthGrid, body: bodyGrid };

interface Network {
  readonly first: Convolution;
  readonly second: Convolution;
  readonly adding: readonly Convolution[];
  /** Of each row's greatest and mean values, given back to all its sectors. */
  readonly whole: Convolution;
  readonly lines: Convolution;
  readonly there: { readonly weights: Float32Array; readonly bias: number };
}

const channels = { first: 12, rest: 16 } as const;

function read(part: Part): Network {
  const w = new Weights(weightsIn(trained[part]));
  const c = channels.rest;
  const network = {
    first: convolution(w, { from: patchChannels + 2, to: channels.first, rows: 5, columns: 5 }),
    second: convolution(w, { from: channels.first, to: c, rows: 5, columns: 3 }),
    adding: [2, 4, 8].map((dilation) =>
      convolution(w, { from: c, to: c, rows: 5, columns: 3, dilation }),
    ),
    whole: convolution(w, { from: 2 * c, to: c, rows: 5, columns: 1 }),
    lines: convolution(w, { from: c, to: lines[part], rows: 5, columns: 3, signed: true }),
    there: { weights: w.take(c), bias: w.take(1)[0] },
  };
  w.end();
  return network;
}

const networks = new Map<Part, Network>();

function networkOf(part: Part): Network {
  const network = networks.get(part) ?? read(part);
  networks.set(part, network);
  return network;
}

/** Trained on rendered photos only (fixtures/training). */
export function mouthBelief(patch: SectorPatch): MouthBelief {
  const { each, odds } = through('mouth', patch, true);
  return { rim: each[0], crests: each[1], outer: each[2], odds };
}

/** Where the body's side ends on what it stands on. */
export const bodyBelief = (patch: SectorPatch): LineBelief => through('body', patch, false).each[0];

function through(part: Part, patch: SectorPatch, round: boolean) {
  const net = networkOf(part);
  const grid = grids[part];
  let x = halved(convolve(inputOf(patch, grid), net.first, round), true);
  x = halved(convolve(x, net.second, round), true);
  for (const layer of net.adding) x = added(x, convolve(x, layer, round));
  const whole = convolve(pooled(x), net.whole, false);
  x = spreadOver(x, whole);
  const { values } = convolve(x, net.lines, round);
  const cells = grid.rows * sectorsOf(grid);
  const each = Array.from({ length: lines[part] }, (_, line) =>
    lineBelief(values.subarray(line * cells, (line + 1) * cells), grid),
  );
  return { each, odds: weighed(whole, net.there.weights, net.there.bias) };
}

function inputOf({ values: light, lean }: SectorPatch, { rows, columns }: SectorGrid): Planes {
  const cells = rows * columns;
  const values = new Float32Array((patchChannels + 2) * cells);
  values.set(light);
  for (let x = 0; x < columns; x++) {
    const side = portable.cos((2 * Math.PI * (x + 0.5)) / columns);
    for (let y = 0; y < rows; y++) values[patchChannels * cells + y * columns + x] = side;
  }
  values.fill(lean, (patchChannels + 1) * cells);
  return { values, channels: patchChannels + 2, rows, columns };
}

/** One column added to every other. */
function spreadOver(planes: Planes, column: Planes): Planes {
  const { values, columns } = planes;
  for (let i = 0; i < values.length; i++) values[i] += column.values[Math.floor(i / columns)];
  return planes;
}

function lineBelief(logits: Float32Array, grid: SectorGrid): LineBelief {
  const { rows } = grid;
  const sectors = sectorsOf(grid);
  const out = new Float64Array(rows * sectors);
  const column = new Float64Array(rows);
  for (let s = 0; s < sectors; s++) {
    let most = Number.NEGATIVE_INFINITY;
    for (let y = 0; y < rows; y++) {
      column[y] = logits[y * sectors + s];
      if (column[y] > most) most = column[y];
    }
    out.set(shares(column, most).each, s * rows);
  }
  return { shares: out };
}
