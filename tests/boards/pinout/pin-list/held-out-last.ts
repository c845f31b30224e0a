import { rowAfterRow, singleRow, zigZag } from '../../../../boards/library/grids';
import type { HeldOutList } from './held-out';

/** Further lists, written down and read once when all else was done. Words and meanings: common practice, no source. */
export const HELD_OUT_LAST: readonly HeldOutList[] = [
  {
    name: 'two columns of whole words',
    grid: zigZag(7),
    text: `Front panel header, 14 positions (top view)
Pin 1  Power LED anode (+)          Pin 2  HDD activity LED anode (+)
Pin 3  Power LED cathode (-)        Pin 4  HDD activity LED cathode (-)
Pin 5  Power on switch              Pin 6  Reset switch
Pin 7  Switch return                Pin 8  Switch return
Pin 9  Speaker output               Pin 10 Chassis intrusion
Pin 11 Vcc +5V                      Pin 12 Ground
Pin 13 Reserved                     Pin 14 (omitted)`,
    meant: {
      1: 'power-led-feed',
      2: 'drive-led-feed',
      3: 'power-led-sink',
      4: 'drive-led-sink',
      5: 'power-switch-input',
      6: 'reset-switch-input',
      7: 'ground',
      8: 'ground',
      9: 'speaker-drive',
      10: 'case-open-input',
      11: 'supply-5v',
      12: 'ground',
      13: 'reserved',
      14: 'no pin',
    },
  },
  {
    name: 'names of data lines with the sign in the middle',
    grid: zigZag(5),
    text: `USB header 1
1: USB_VCC_F   2: USB_VCC_F
3: USBPN4      4: USBPN5
5: USBPP4      6: USBPP5
7: GND         8: GND
9: X           10: OC#`,
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
      10: 'usb-over-current',
    },
  },
  {
    name: 'ranges in words in one sentence',
    grid: rowAfterRow(4),
    text: `EPS12V: pins 1 through 4 are ground (black), pins 5 through 8 are +12 V (yellow)`,
    meant: {
      1: 'ground',
      2: 'ground',
      3: 'ground',
      4: 'ground',
      5: 'supply-12v',
      6: 'supply-12v',
      7: 'supply-12v',
      8: 'supply-12v',
    },
  },
  {
    name: 'equals signs in one line',
    grid: singleRow(9),
    text: `1=P-LED(+) 2=P-LED(-) 3=H-LED(+) 4=H-LED(-) 5=PWSW 6=GND 7=RST 8=GND 9=Key`,
    meant: {
      1: 'power-led-feed',
      2: 'power-led-sink',
      3: 'drive-led-feed',
      4: 'drive-led-sink',
      5: 'power-switch-input',
      6: 'ground',
      7: 'reset-switch-input',
      8: 'ground',
      9: 'no pin',
    },
  },
  {
    name: 'a table in the language of pages',
    grid: zigZag(5),
    text: `<tr><td>1</td><td>AUD_MIC</td></tr>
<tr><td>2</td><td>AUD_GND</td></tr>
<tr><td>3</td><td>AUD_MIC_BIAS</td></tr>
<tr><td>4</td><td>AUD_VCC</td></tr>
<tr><td>5</td><td>AUD_FPOUT_R</td></tr>
<tr><td>6</td><td>AUD_RET_R</td></tr>
<tr><td>7</td><td>HP_ON</td></tr>
<tr><td>8</td><td>KEY</td></tr>
<tr><td>9</td><td>AUD_FPOUT_L</td></tr>
<tr><td>10</td><td>AUD_RET_L</td></tr>`,
    meant: {
      1: 'ac97-mic',
      2: 'ground',
      3: 'ac97-mic-bias',
      4: 'ac97-supply',
      5: 'ac97-out-right',
      6: 'ac97-return-right',
      7: 'ac97-phones-on',
      8: 'no pin',
      9: 'ac97-out-left',
      10: 'ac97-return-left',
    },
  },
  {
    name: 'a table with a direction and a note',
    grid: singleRow(4),
    text: `Chassis fan\nPin\tName\tDirection\tNote\n1\tGnd\t-\t\n2\tFan power\tout\t12 V, 1 A max\n3\tFan tachometer\tin\t2 pulses per turn\n4\tFan speed control\tout\t25 kHz`,
    meant: { 1: 'ground', 2: 'fan-supply', 3: 'fan-tach', 4: 'fan-pwm' },
  },
  {
    name: 'dots between positions and words',
    grid: singleRow(5),
    text: `Position 1 .... Thermistor +\nPosition 2 .... Thermistor -\nPosition 3 .... not used\nPosition 4 .... CLR_CMOS\nPosition 5 .... 0 V`,
    meant: { 1: 'sensor-input', 2: 'ground', 3: 'no-connection', 4: 'clear-settings', 5: 'ground' },
  },
];
