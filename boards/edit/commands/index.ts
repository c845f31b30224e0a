import { addConnector } from './add-connector';
import { addLead } from './add-lead';
import { addPhoto } from './add-photo';
import { addToTray } from './add-to-tray';
import { addUnit } from './add-unit';
import { answerQuestion } from './answer-question';
import { arrangePlugs } from './arrange-plugs';
import { beginTray } from './begin-tray';
import { believeSource } from './believe-source';
import { changePin } from './change-pin';
import { changePins } from './change-pins';
import { changeTrayPaths } from './change-tray-paths';
import { changeTrayPlace } from './change-tray-place';
import { choosePlace } from './choose-place';
import { colourWire } from './colour-wire';
import { dropLogLine } from './drop-log-line';
import { dropReading } from './drop-reading';
import { fillPins } from './fill-pins';
import { fitOut } from './fit-out';
import { layBoard } from './lay-board';
import { layRuns } from './lay-runs';
import { listDrivePlaces } from './list-drive-places';
import { markPlug } from './mark-plug';
import { measureLead } from './measure-lead';
import { mergeBoard } from './merge-board';
import { mergeCase } from './merge-case';
import { mirrorPins } from './mirror-pins';
import { moveContact } from './move-contact';
import { moveInTray } from './move-in-tray';
import { noteBoard } from './note-board';
import { noteBuild } from './note-build';
import { noteConnector } from './note-connector';
import { noteReading } from './note-reading';
import { noteRemark } from './note-remark';
import { noteStandoffs } from './note-standoffs';
import { noteTrial } from './note-trial';
import { numberConnector } from './number-connector';
import { outlineBoard } from './outline-board';
import { pinRun } from './pin-run';
import { placeConnector } from './place-connector';
import { placeUnit } from './place-unit';
import { pointPhoto } from './point-photo';
import { rateConnector } from './rate-connector';
import { rateFan } from './rate-fan';
import { rateUnit } from './rate-unit';
import { removeConnector } from './remove-connector';
import { removeFromTray } from './remove-from-tray';
import { removeLead } from './remove-lead';
import { removePhoto } from './remove-photo';
import { removeTray } from './remove-tray';
import { removeUnit } from './remove-unit';
import { renameBoard } from './rename-board';
import { renameBuild } from './rename-build';
import { renameConnector } from './rename-connector';
import { renameLead } from './rename-lead';
import { renameUnit } from './rename-unit';
import { replaceBoard } from './replace-board';
import { replaceCase } from './replace-case';
import { replaceTray } from './replace-tray';
import { reshapeConnector } from './reshape-connector';
import { seatPlug } from './seat-plug';
import { setLeadAside } from './set-lead-aside';
import { setPart } from './set-part';
import { sizeTray } from './size-tray';
import { splitPlug } from './split-plug';
import { startOver } from './start-over';
import { tickSteps } from './tick-steps';
import { turnPlug } from './turn-plug';
import { turnView } from './turn-view';
import { unseatAll } from './unseat-all';
import { unseatPlug } from './unseat-plug';
import { weighCause } from './weigh-cause';

/** Every way to change a build. A command that is not here does not exist. */
export const COMMANDS = [
  seatPlug,
  turnPlug,
  unseatPlug,
  unseatAll,
  arrangePlugs,
  addLead,
  removeLead,
  renameLead,
  setLeadAside,
  setPart,
  rateFan,
  rateConnector,
  rateUnit,
  listDrivePlaces,
  choosePlace,
  moveContact,
  splitPlug,
  colourWire,
  markPlug,
  measureLead,
  layRuns,
  pinRun,
  addUnit,
  removeUnit,
  renameUnit,
  placeUnit,
  renameBuild,
  noteBuild,
  turnView,
  fitOut,
  tickSteps,
  answerQuestion,
  noteTrial,
  noteRemark,
  dropLogLine,
  startOver,
  weighCause,
  renameBoard,
  noteBoard,
  outlineBoard,
  addConnector,
  removeConnector,
  renameConnector,
  noteConnector,
  placeConnector,
  numberConnector,
  reshapeConnector,
  changePin,
  changePins,
  mirrorPins,
  believeSource,
  fillPins,
  noteReading,
  dropReading,
  addPhoto,
  removePhoto,
  pointPhoto,
  replaceBoard,
  replaceCase,
  mergeBoard,
  mergeCase,
  beginTray,
  replaceTray,
  removeTray,
  sizeTray,
  layBoard,
  addToTray,
  moveInTray,
  changeTrayPlace,
  noteStandoffs,
  changeTrayPaths,
  removeFromTray,
] as const;
