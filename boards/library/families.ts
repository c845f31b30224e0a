import { SOLDERED } from '../document/power-job';

/**
 * Which plugs enter which connector, by the shape of the shell. Open posts and the boxes round
 * them take every plug of their pitch; the others take only their own kind.
 */
export const FAMILY = {
  pinHeader: 'pin-header',
  mainPower: 'main-power',
  cpuPower: 'cpu-power',
  cardPower: 'card-power',
  peripheralPower: 'peripheral-power',
  sataData: 'sata-data',
  sataPower: 'sata-power',
  usbC: 'usb-c-front',
  /** The supply's own end of a cable: it fits no connector of a board, and every supply's socket of its size. */
  supplySide: 'supply-side',
  /** No plug at all: wires that are soldered in, and stay. */
  soldered: SOLDERED,
} as const;
