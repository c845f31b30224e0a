import type { Grid } from '../../../../boards/document/grid';
import { labelled, rowAfterRow, singleRow, thereAndBack, zigZag } from '../../../../boards/library/grids';
import type { SignalId } from '../../../../boards/signals/signals';

/** What a person who knows the trade makes of each pin; "no pin" where none stands. */
type Meant = SignalId | 'no pin';

export interface HeldOutList {
  readonly name: string;
  readonly grid: Grid;
  readonly text: string;
  readonly meant: Readonly<Record<string, Meant>>;
}

/**
 * Lists in the manner of ten manuals, written down before there was a word list or a reader. Words and
 * meanings: common practice, no source.
 */
export const HELD_OUT: readonly HeldOutList[] = [
  {
    name: 'a table with a column of explanations',
    grid: zigZag(5),
    text: `Front Panel Connector (PANEL1)

Pin\tSignal Name\tDescription
1\tHDD_LED+\tHard disk activity LED, anode
2\tPWR_LED+\tPower indicator, anode
3\tHDD_LED-\tHard disk activity LED, cathode
4\tPWR_LED-\tPower indicator, cathode
5\tRST_SW-\tReset button, ground side
6\tPWR_SW+\tPower button
7\tRST_SW+\tReset button
8\tPWR_SW-\tPower button, ground side
9\tRSVD\tDo not connect
10\tNo pin\t`,
    meant: {
      1: 'drive-led-feed',
      2: 'power-led-feed',
      3: 'drive-led-sink',
      4: 'power-led-sink',
      5: 'ground',
      6: 'power-switch-input',
      7: 'reset-switch-input',
      8: 'ground',
      9: 'reserved',
      10: 'no pin',
    },
  },
  {
    name: 'a markdown table, odd pins on the left and even ones on the right',
    grid: zigZag(5),
    text: `| Pin | Signal | Pin | Signal |
|----:|--------|----:|--------|
| 1 | USB_PWR (5V) | 2 | USB_PWR (5V) |
| 3 | USB0_N | 4 | USB1_N |
| 5 | USB0_P | 6 | USB1_P |
| 7 | Ground | 8 | Ground |
| 9 | -- (keyed) | 10 | N/C |`,
    meant: {
      1: 'usb-vbus',
      2: 'usb-vbus',
      3: 'usb-d-minus',
      4: 'usb-d-minus',
      5: 'usb-d-plus',
      6: 'usb-d-plus',
      7: 'ground',
      8: 'ground',
      9: 'no pin',
      10: 'no-connection',
    },
  },
  {
    name: 'one line in the running text',
    grid: singleRow(4),
    text: 'CPU fan header: pin 1 – Ground; pin 2 – +12V DC; pin 3 – RPM signal; pin 4 – speed control (PWM).',
    meant: { 1: 'ground', 2: 'fan-supply', 3: 'fan-tach', 4: 'fan-pwm' },
  },
  {
    name: 'equals signs and the names of the audio standard',
    grid: zigZag(5),
    text: `1 = Port 1 Left Channel
2 = Analog ground
3 = Port 1 Right Channel
4 = Dongle presence detect (active low)
5 = Port 2 Right Channel
6 = Port 1 sense return
7 = Sense send
8 = Key
9 = Port 2 Left Channel
10 = Port 2 sense return`,
    meant: {
      1: 'hd-mic-left',
      2: 'ground',
      3: 'hd-mic-right',
      4: 'hd-presence',
      5: 'hd-phones-right',
      6: 'hd-sense1-return',
      7: 'hd-sense-send',
      8: 'no pin',
      9: 'hd-phones-left',
      10: 'hd-sense2-return',
    },
  },
  {
    name: 'names of an internal USB 3 cable in two columns, counted out and back',
    grid: thereAndBack(10),
    text: `Vbus              1      19   Vbus
IntA_P1_SSRX-     2      18   IntA_P2_SSRX-
IntA_P1_SSRX+     3      17   IntA_P2_SSRX+
GND               4      16   GND
IntA_P1_SSTX-     5      15   IntA_P2_SSTX-
IntA_P1_SSTX+     6      14   IntA_P2_SSTX+
GND               7      13   GND
IntA_P1_D-        8      12   IntA_P2_D-
IntA_P1_D+        9      11   IntA_P2_D+
ID                10     20   (no pin)`,
    meant: {
      1: 'usb3-vbus',
      2: 'usb3-ssrx-minus',
      3: 'usb3-ssrx-plus',
      4: 'ground',
      5: 'usb3-sstx-minus',
      6: 'usb3-sstx-plus',
      7: 'ground',
      8: 'usb3-d-minus',
      9: 'usb3-d-plus',
      10: 'no-connection',
      11: 'usb3-d-plus',
      12: 'usb3-d-minus',
      13: 'ground',
      14: 'usb3-sstx-plus',
      15: 'usb3-sstx-minus',
      16: 'ground',
      17: 'usb3-ssrx-plus',
      18: 'usb3-ssrx-minus',
      19: 'usb3-vbus',
      20: 'no pin',
    },
  },
  {
    name: 'spelt with full stops, as an older manual prints it',
    grid: zigZag(10),
    text: `Pin1:  Pwr. LED (+)        Pin2:  Speaker (+)
Pin3:  No Pin              Pin4:  N.C.
Pin5:  Pwr. LED (-)        Pin6:  N.C.
Pin7:  Key Lock            Pin8:  Speaker (-)
Pin9:  Ground              Pin10: N.C.
Pin11: H.D.D. LED (+)      Pin12: Soft-Off Switch
Pin13: H.D.D. LED (-)      Pin14: Ground
Pin15: Reset Sw.           Pin16: N.C.
Pin17: Ground              Pin18: N.C.
Pin19: Msg. LED (+)        Pin20: Msg. LED (-)`,
    meant: {
      1: 'power-led-feed',
      2: 'speaker-feed',
      3: 'no pin',
      4: 'no-connection',
      5: 'power-led-sink',
      6: 'no-connection',
      7: 'key-lock-input',
      8: 'speaker-drive',
      9: 'ground',
      10: 'no-connection',
      11: 'drive-led-feed',
      12: 'power-switch-input',
      13: 'drive-led-sink',
      14: 'ground',
      15: 'reset-switch-input',
      16: 'no-connection',
      17: 'ground',
      18: 'no-connection',
      19: 'message-led-feed',
      20: 'message-led-sink',
    },
  },
  {
    name: 'a serial port between commas',
    grid: zigZag(5),
    text: 'COM2 pinout: 1 DCD#, 2 SIN, 3 SOUT, 4 DTR#, 5 GND, 6 DSR#, 7 RTS#, 8 CTS#, 9 RI#, 10 key',
    meant: {
      1: 'serial-dcd',
      2: 'serial-rxd',
      3: 'serial-txd',
      4: 'serial-dtr',
      5: 'ground',
      6: 'serial-dsr',
      7: 'serial-rts',
      8: 'serial-cts',
      9: 'serial-ri',
      10: 'no pin',
    },
  },
  {
    name: 'a main supply with its ranges drawn together',
    grid: rowAfterRow(12),
    text: `Pins 1-2      +3.3 Vdc
Pin 3         COM
Pin 4         +5 Vdc
Pin 5         COM
Pin 6         +5 Vdc
Pin 7         COM
Pin 8         PG (power good)
Pin 9         +5 Vsb
Pins 10, 11   +12 Vdc
Pins 12, 13   +3.3 Vdc
Pin 14        -12 Vdc
Pin 15        COM
Pin 16        PS-ON
Pins 17 to 19 COM
Pin 20        not used
Pins 21–23    +5 Vdc
Pin 24        COM`,
    meant: {
      1: 'supply-3v3',
      2: 'supply-3v3',
      3: 'ground',
      4: 'supply-5v',
      5: 'ground',
      6: 'supply-5v',
      7: 'ground',
      8: 'power-ok',
      9: 'supply-5v-standby',
      10: 'supply-12v',
      11: 'supply-12v',
      12: 'supply-3v3',
      13: 'supply-3v3',
      14: 'supply-minus-12v',
      15: 'ground',
      16: 'ps-on',
      17: 'ground',
      18: 'ground',
      19: 'ground',
      20: 'no-connection',
      21: 'supply-5v',
      22: 'supply-5v',
      23: 'supply-5v',
      24: 'ground',
    },
  },
  {
    name: 'rows with letters',
    grid: labelled(['A1 A2 A3 A4 A5', 'B1 B2 B3 B4 B5'], 2),
    text: `A1 LED_PWR_A
A2 LED_PWR_K
A3 LED_HDD_A
A4 LED_HDD_K
A5 5V_STBY
B1 BTN_PWR#
B2 0V
B3 BTN_RST#
B4 0V
B5 INTRUSION#`,
    meant: {
      A1: 'power-led-feed',
      A2: 'power-led-sink',
      A3: 'drive-led-feed',
      A4: 'drive-led-sink',
      A5: 'supply-5v-standby',
      B1: 'power-switch-input',
      B2: 'ground',
      B3: 'reset-switch-input',
      B4: 'ground',
      B5: 'case-open-input',
    },
  },
  {
    name: 'no numbers at all, one word a line',
    grid: singleRow(5),
    text: `Power LED anode
(blank)
Power LED cathode
Keylock
GND`,
    meant: {
      1: 'power-led-feed',
      2: 'no pin',
      3: 'power-led-sink',
      4: 'key-lock-input',
      5: 'ground',
    },
  },
];
