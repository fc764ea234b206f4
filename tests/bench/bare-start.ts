import { spawnSync } from 'node:child_process';

/** One run of a process from start to end. */
export interface Run {
  readonly milliseconds: number;
  /** Largest memory held, MB. */
  readonly megabytes: number;
}

const TELL_MEMORY = `data:text/javascript,process.on('exit',()=>process.stderr.write('\\nmaxrss '+process.resourceUsage().maxRSS))`;

/** Median time and memory of running Node with these arguments. */
export function timed(args: readonly string[], runs: number): Run {
  const all = Array.from({ length: runs }, () => oneRun(args));
  const times = all.map(({ milliseconds }) => milliseconds);
  return { milliseconds: median(times), megabytes: Math.max(...all.map(({ megabytes }) => megabytes)) };
}

export function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
}

function oneRun(args: readonly string[]): Run {
  const began = performance.now();
  const { status, stderr } = spawnSync(process.execPath, ['--import', TELL_MEMORY, ...args], {
    encoding: 'utf8',
  });
  const milliseconds = performance.now() - began;
  if (status !== 0) throw new Error(`ended with ${status}: ${stderr}`);
  return { milliseconds, megabytes: Number(/maxrss (\d+)$/.exec(stderr)?.[1]) / 1024 };
}
