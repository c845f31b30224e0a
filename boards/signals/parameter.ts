/** A value that no sheet states and every board chooses: what is usual, how far it goes, who says so. */
export interface Parameter {
  readonly id: string;
  readonly name: string;
  readonly unit: 'V' | 'A' | 'ohm';
  readonly usual: number;
  readonly low: number;
  readonly high: number;
  /** Which end of the range lets more current flow. */
  readonly strong: 'low' | 'high';
  readonly source: string;
  readonly confidence: 'read' | 'read in secondary' | 'from memory' | 'common practice';
}
