import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { Progress } from '../../src/cli/progress.ts';
import { RecordingMachine } from './recording-machine.ts';

class Terminal extends RecordingMachine {
  override readonly errIsTerminal = true;
  readonly columns = 20;
}

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['performance'] });
});
afterEach(() => {
  vi.useRealTimers();
});

it('says nothing of a step that takes less than a second', () => {
  const machine = new Terminal('/');
  const progress = new Progress(machine);
  vi.advanceTimersByTime(900);
  progress.say('planning');
  progress.done();
  expect(machine.stderr).toBe('');
});

it('says what takes longer on one line of the terminal, ten times a second at most, and takes it away', () => {
  const machine = new Terminal('/');
  const progress = new Progress(machine);
  vi.advanceTimersByTime(1100);
  progress.say('planning the cloth of the lining');
  progress.say('too soon');
  vi.advanceTimersByTime(150);
  progress.say('shell');
  progress.done();
  expect(machine.stderr.split('\r\u001b[K')).toEqual(['', 'planning the cloth ', 'shell', '']);
});

it('says nothing where nobody looks', () => {
  const machine = new RecordingMachine('/');
  const progress = new Progress(machine);
  vi.advanceTimersByTime(5000);
  progress.say('planning');
  progress.done();
  expect(machine.stderr).toBe('');
});
