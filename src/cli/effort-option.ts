import { Option } from 'commander';

/** `--effort`, of every command that plans cloth. */
export function effortOption(): Option {
  return new Option(
    '--effort <how>',
    'of planning the cloth: quick takes seconds, thorough minutes, and Ctrl-C keeps the best so far',
  ).choices(['quick', 'thorough']);
}
