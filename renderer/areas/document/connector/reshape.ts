import type { Connector } from '../../../../boards/document/connector';
import type { Command } from '../../../../boards/edit/command';
import { refusalWords } from '../../../../boards/edit/refusal-words';
import { doCommand } from '../../../do-command';
import { askQuestion } from '../../../store/ask';
import type { Workbench } from '../../../workbench';

export type Shape = Extract<Command, { name: 'reshape-connector' }>['args']['shape'];

/** The shape a connector has now. */
export function shapeOf({ grid, family, shroud }: Connector): Shape {
  const { rows, cols, pitchMm, rowPitchMm } = grid;
  return { rows, cols, pitchMm, rowPitchMm: rowPitchMm ?? null, family, shroud: shroud ?? null };
}

/** Gives a connector another shape; where that costs pins or plugs, asks first, and does it in one step. */
export async function reshape(
  workbench: Pick<Workbench, 'editor' | 'session'>,
  connector: Connector,
  changed: Partial<Shape>,
): Promise<void> {
  const { editor, session } = workbench;
  const build = editor.getState().open?.history.present;
  if (build === undefined) return;
  const args = { connector: connector.id, shape: { ...shapeOf(connector), ...changed } };
  const command: Command = { name: 'reshape-connector', args };
  const result = editor.getState().run(command);
  if (result.ok) {
    session.getState().tell('The connector has another shape.');
    return;
  }
  const words = refusalWords(result.problem, build);
  if (result.problem.code !== 'reshape-loses') {
    session.getState().tell(words);
    return;
  }
  const answer = await askQuestion(session, {
    title: 'Another shape costs something',
    lines: [words, 'Undo brings all of it back.'],
    choices: [{ id: 'anyway', label: 'Do it anyway' }],
  });
  if (answer === 'anyway')
    doCommand(workbench, { name: 'reshape-connector', args: { ...args, anyway: true } });
}
