import type { HostApi } from '../../boards/host';
import type { WrittenReport } from './crash-screen';

/** Has the machine write down what failed; null where it cannot. What goes into the report, the machine decides. */
export async function writeReport(
  host: Pick<HostApi, 'writeReport'>,
  thrown: unknown,
): Promise<WrittenReport | null> {
  const { name, message, stack = '' } = thrown instanceof Error ? thrown : new Error();
  const trouble = {
    name: name.slice(0, 100),
    message: message.slice(0, 10_000),
    stack: stack.slice(0, 100_000),
  };
  try {
    const written = await host.writeReport(trouble);
    return written.ok ? written.value : null;
  } catch {
    // The machine itself is gone; there is nobody to write anything.
    return null;
  }
}
