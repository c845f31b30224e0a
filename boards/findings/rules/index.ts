import { freezeDeep } from '../../base/freeze';
import type { Rule } from '../rule';
import { ac97OnHdAudio } from './ac97-on-hd-audio';
import { adapterMayBurn } from './adapter-may-burn';
import { cableOnOneUnit } from './cable-on-one-unit';
import { cardPowerMissing } from './card-power-missing';
import { contactOffPins } from './contact-off-pins';
import { cpuCardExchanged } from './cpu-card-exchanged';
import { cpuPowerMissing } from './cpu-power-missing';
import { driveHeldOff } from './drive-held-off';
import { drivePlugTurned } from './drive-plug-turned';
import { drivePowerMissing } from './drive-power-missing';
import { fanOverload } from './fan-overload';
import { fanSupplyOnSignal } from './fan-supply-on-signal';
import { fanUnpowered } from './fan-unpowered';
import { feedRing } from './feed-ring';
import { groundOnOverCurrent } from './ground-on-over-current';
import { hdAudioOnAc97 } from './hd-audio-on-ac97';
import { hubUnfed } from './hub-unfed';
import { ieee1394OnUsb } from './ieee1394-on-usb';
import { inputHeld } from './input-held';
import { leadLeftOver } from './lead-left-over';
import { ledAcrossSupply } from './led-across-supply';
import { ledAlwaysLit } from './led-always-lit';
import { ledDepends } from './led-depends';
import { looseEndMismatch } from './loose-end-mismatch';
import { mainPowerMissing } from './main-power-missing';
import { noPlace } from './no-place';
import { onClearSettings } from './on-clear-settings';
import { outletsUnknown } from './outlets-unknown';
import { overhang } from './overhang';
import { pairSplit } from './pair-split';
import { panelOnSerial } from './panel-on-serial';
import { pinUnsure } from './pin-unsure';
import { pinsJoined } from './pins-joined';
import { placeTaken } from './place-taken';
import { placesExchanged } from './places-exchanged';
import { plugTooWide } from './plug-too-wide';
import { portsMixed } from './ports-mixed';
import { railLeftOff } from './rail-left-off';
import { requiredLeadMissing } from './required-lead-missing';
import { reversed } from './reversed';
import { seatImpossible } from './seat-impossible';
import { shifted } from './shifted';
import { standbyOverload } from './standby-overload';
import { standoffBesideHole } from './standoff-beside-hole';
import { standoffShort } from './standoff-short';
import { supplyJoined } from './supply-joined';
import { supplyMismatch } from './supply-mismatch';
import { supplyOnWire } from './supply-on-wire';
import { supplyReversed } from './supply-reversed';
import { switchesExchanged } from './switches-exchanged';
import { usbOn1394 } from './usb-on-1394';
import { watchedHeaderSilent } from './watched-header-silent';
import { wrongFunction } from './wrong-function';
import { wrongPins } from './wrong-pins';

/** Every rule. Within one severity findings are told in this order: what harms first, hints last. */
export const RULES: readonly Rule[] = freezeDeep([
  seatImpossible,
  standoffShort,
  usbOn1394,
  ieee1394OnUsb,
  cpuCardExchanged,
  drivePlugTurned,
  supplyMismatch,
  looseEndMismatch,
  panelOnSerial,
  hdAudioOnAc97,
  ac97OnHdAudio,
  pinsJoined,
  supplyJoined,
  ledAcrossSupply,
  supplyReversed,
  supplyOnWire,
  fanSupplyOnSignal,
  switchesExchanged,
  placesExchanged,
  inputHeld,
  onClearSettings,
  groundOnOverCurrent,
  fanUnpowered,
  mainPowerMissing,
  cpuPowerMissing,
  cardPowerMissing,
  drivePowerMissing,
  driveHeldOff,
  hubUnfed,
  feedRing,
  cableOnOneUnit,
  fanOverload,
  watchedHeaderSilent,
  ledAlwaysLit,
  shifted,
  reversed,
  contactOffPins,
  pairSplit,
  portsMixed,
  wrongPins,
  wrongFunction,
  plugTooWide,
  requiredLeadMissing,
  standbyOverload,
  ledDepends,
  standoffBesideHole,
  adapterMayBurn,
  outletsUnknown,
  pinUnsure,
  leadLeftOver,
  placeTaken,
  overhang,
  noPlace,
  railLeftOff,
]);
