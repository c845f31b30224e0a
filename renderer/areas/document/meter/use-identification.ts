import { useEffect, useRef, useState } from 'react';
import type { Connector } from '../../../../boards/document/connector';
import type { MeterQuestion } from '../../../../boards/pinout/meter/identification';
import { type Identifier, identifierOver } from './identifier';
import type { MeterAnswer, MeterTask } from './work-out';

/** After so long the person is offered to stop it. */
const LONG_MS = 1_000;

export interface MeterState {
  /** The last answer; null before the first. */
  readonly answer: MeterAnswer | null;
  /** "working" and "stopped": the answer is of the readings before. */
  readonly state: 'working' | 'long' | 'ready' | 'stopped';
  readonly stop: () => void;
  readonly again: () => void;
}

interface Answered {
  readonly key: string;
  readonly answer: MeterAnswer;
}

/** What the readings of a connector say, worked out beside the window whenever they change. */
export function useIdentification(connector: Connector, skipped: readonly MeterQuestion[]): MeterState {
  const identifier = useIdentifier();
  const [answered, setAnswered] = useState<Answered | null>(null);
  const [halted, setHalted] = useState<{ readonly key: string; readonly why: 'stopped' | 'long' } | null>(
    null,
  );
  const task: MeterTask = { connector: bare(connector), skipped };
  const key = JSON.stringify(task);
  const stopped = halted?.key === key && halted.why === 'stopped';
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key says all that the task says
  useEffect(() => {
    if (stopped || answered?.key === key) return;
    identifier().ask(task, (answer) => setAnswered({ key, answer }));
    const timer = setTimeout(() => setHalted({ key, why: 'long' }), LONG_MS);
    return () => clearTimeout(timer);
  }, [key, stopped, answered?.key === key]);
  const ready = answered?.key === key;
  return {
    answer: answered?.answer ?? null,
    state: ready ? 'ready' : halted?.key === key ? halted.why : 'working',
    stop: () => {
      identifier().stop();
      setHalted({ key, why: 'stopped' });
    },
    again: () => setHalted(null),
  };
}

/** One worker for as long as the view is there. */
function useIdentifier(): () => Identifier {
  const kept = useRef<Identifier | null>(null);
  const workers = useRef<Worker[]>([]);
  useEffect(
    () => () => {
      for (const worker of workers.current.splice(0)) worker.terminate();
      kept.current = null;
    },
    [],
  );
  return () => {
    kept.current ??= identifierOver(() => {
      const worker = new Worker(new URL('./meter-worker.ts', import.meta.url), { type: 'module' });
      workers.current.push(worker);
      return worker;
    });
    return kept.current;
  };
}

/** What an answer rests on: the grid, which posts are missing, the readings. */
function bare({ id, family, grid, pins, readings = [] }: Connector): Connector {
  return {
    id,
    print: '',
    title: '',
    family,
    grid,
    pins: pins.filter(({ missing }) => missing).map(({ pin }) => ({ pin, missing: true })),
    place: { xMm: 0, yMm: 0, turn: 0 },
    readings,
  };
}
