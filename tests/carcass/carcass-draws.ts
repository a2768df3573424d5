import type { ShareNode, TissueKey } from '@/lib/carcass';

/** A source of chance with a fixed seed: uniform numbers in (0, 1), standard normal and gamma variates. */
export type Chance = {
  readonly uniform: () => number;
  readonly normal: () => number;
  readonly fillGamma: (shape: number, out: Float64Array) => void;
};

/**
 * The small fast chaotic generator of PractRand (sfc32), whose period no test comes near; normals by the polar method of Marsaglia
 * and Bray (1964), gammas by Marsaglia and Tsang (2000), ACM TOMS 26(3).
 */
export function chanceFrom(seed: number): Chance {
  let [a, b, c, counter] = [0, seed | 0, 0x9e3779b9 | 0, 1];
  const uniform = (): number => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return ((sum >>> 0) + 0.5) / 4_294_967_296;
  };
  for (let warm = 0; warm < 16; warm += 1) uniform();
  let spare = Number.NaN;
  const normal = (): number => {
    if (!Number.isNaN(spare)) {
      const kept = spare;
      spare = Number.NaN;
      return kept;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const radius = x * x + y * y;
      if (radius < 1 && radius > 0) {
        const scale = Math.sqrt((-2 * Math.log(radius)) / radius);
        spare = y * scale;
        return x * scale;
      }
    }
  };
  const fillGamma = (shape: number, out: Float64Array): void => {
    const raised = shape < 1 ? shape + 1 : shape;
    const d = raised - 1 / 3;
    const s = 1 / Math.sqrt(9 * d);
    for (let at = 0; at < out.length; at += 1) {
      for (;;) {
        const x = normal();
        const root = 1 + s * x;
        if (root <= 0) continue;
        const v = root * root * root;
        const u = uniform();
        const squared = x * x;
        if (u < 1 - 0.0331 * squared * squared || Math.log(u) < 0.5 * squared + d * (1 - v + Math.log(v))) {
          out[at] = shape < 1 ? d * v * uniform() ** (1 / shape) : d * v;
          break;
        }
      }
    }
  };
  return { uniform, normal, fillGamma };
}

/** What a block of carcasses has of one tissue, a number a carcass: shares of the whole that are sound, and lost to a wound. */
export type ShareColumn = { readonly sound: Float64Array; readonly lost: Float64Array | null };

/**
 * Draws carcasses of one tree, a block at a time: `next` fills the columns with as many new ones as they are long. Only splits and
 * wounds are drawn; a wounded share is taken for the Beta with its mean and square.
 */
export function shareDrawer(
  tree: ShareNode,
  blockLength: number,
  chance: Chance,
): { readonly columns: ReadonlyMap<TissueKey, ShareColumn>; readonly next: () => void } {
  const columns = new Map<TissueKey, ShareColumn>();
  const steps: (() => void)[] = [];
  const column = (): Float64Array => new Float64Array(blockLength);
  const lay = (node: ShareNode, amount: Float64Array, soundShare: Float64Array | null): void => {
    if ('leaf' in node) {
      if (soundShare === null) {
        columns.set(node.leaf, { sound: amount, lost: null });
        return;
      }
      const [sound, lost] = [column(), column()];
      columns.set(node.leaf, { sound, lost });
      steps.push(() => {
        for (let at = 0; at < blockLength; at += 1) {
          const all = amount[at] ?? 0;
          const fit = all * (soundShare[at] ?? 0);
          sound[at] = fit;
          lost[at] = all - fit;
        }
      });
    } else if ('sound' in node) {
      const share = column();
      const other = column();
      const { mean, square } = node.sound;
      const concentration = (mean - square) / (square - mean * mean);
      // A part that is wholly lost has a share of zero and nothing to draw.
      if (mean > 0) {
        steps.push(() => {
          chance.fillGamma(concentration * mean, share);
          chance.fillGamma(concentration * (1 - mean), other);
          for (let at = 0; at < blockLength; at += 1) share[at] = (share[at] ?? 0) / ((share[at] ?? 0) + (other[at] ?? 0));
        });
      }
      lay(node.node, amount, share);
    } else if ('children' in node) {
      const parts = node.children.map(column);
      const total = column();
      steps.push(() => {
        total.fill(0);
        node.children.forEach(({ mean }, child) => {
          const part = parts[child] ?? column();
          chance.fillGamma(node.concentration * mean, part);
          for (let at = 0; at < blockLength; at += 1) total[at] = (total[at] ?? 0) + (part[at] ?? 0);
        });
        for (let at = 0; at < blockLength; at += 1) total[at] = (amount[at] ?? 0) / (total[at] ?? 1);
        for (const part of parts) for (let at = 0; at < blockLength; at += 1) part[at] = (part[at] ?? 0) * (total[at] ?? 0);
      });
      node.children.forEach((child, index) => lay(child.node, parts[index] ?? column(), soundShare));
    } else throw new Error('Carcasses are drawn from the whole, not from the meat');
  };
  lay(tree, column().fill(1), null);
  return {
    columns,
    next: () => {
      for (const step of steps) step();
    },
  };
}
