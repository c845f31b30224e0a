import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inOrder, type Task } from '../../../boards/handover/steps/order';

const IDS = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'];

/** Any tasks that wait for any others, themselves and strangers among them. */
const anyTasks: fc.Arbitrary<readonly Task[]> = fc
  .uniqueArray(fc.constantFrom(...IDS), { maxLength: 8 })
  .chain((ids) =>
    fc.tuple(
      ...ids.map((id) =>
        fc.array(fc.constantFrom(...IDS, 'stranger'), { maxLength: 2 }).map((after) => ({ id, after })),
      ),
    ),
  );

/** Whether some order of the tasks keeps every "after": by trying all of them. */
function canBeOrdered(tasks: readonly Task[], done: readonly string[] = []): boolean {
  const open = tasks.filter(({ id }) => !done.includes(id));
  if (open.length === 0) return true;
  return open.some(
    ({ id, after }) =>
      after.every((each) => done.includes(each) || !tasks.some((task) => task.id === each)) &&
      canBeOrdered(tasks, [...done, id]),
  );
}

describe('the order of tasks', () => {
  it('keeps every "after" and loses none, or names a ring that is one', () => {
    fc.assert(
      fc.property(anyTasks, (tasks) => {
        const ordered = inOrder(tasks);
        expect(ordered.ok).toBe(canBeOrdered(tasks));
        if (ordered.ok) {
          const ids = ordered.value.map(({ id }) => id);
          expect([...ids].sort()).toEqual(tasks.map(({ id }) => id).sort());
          for (const { id, after } of tasks)
            for (const before of after.filter((each) => ids.includes(each)))
              expect(ids.indexOf(before)).toBeLessThan(ids.indexOf(id));
          return;
        }
        const { ids } = ordered.problem;
        expect(ids.length).toBeGreaterThan(0);
        ids.forEach((id, at) => {
          const next = ids[(at + 1) % ids.length] ?? '';
          expect(tasks.find((task) => task.id === id)?.after).toContain(next);
        });
      }),
      { numRuns: 2_000 },
    );
  });

  it('leaves tasks that wait for nothing as they were named', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.constantFrom(...IDS)), (ids) => {
        const ordered = inOrder(ids.map((id) => ({ id, after: [] })));
        expect(ordered.ok && ordered.value.map(({ id }) => id)).toEqual(ids);
      }),
    );
  });

  it('takes the first that may come next: of all orders that keep every "after" the one nearest to the given', () => {
    fc.assert(
      fc.property(anyTasks, (tasks) => {
        const ordered = inOrder(tasks);
        if (!ordered.ok) return;
        const done: string[] = [];
        for (const { id } of ordered.value) {
          const free = tasks.find(
            (task) =>
              !done.includes(task.id) &&
              task.after.every((each) => done.includes(each) || !tasks.some((other) => other.id === each)),
          );
          expect(id).toBe(free?.id);
          done.push(id);
        }
      }),
    );
  });
});
