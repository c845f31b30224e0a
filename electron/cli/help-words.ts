export const HELP = `Leadwright: the leads of a case on the right pins of a board, checked before power.

  leadwright check FILE... [--json]   check builds; board and case sheets for their form only
  leadwright check FILE... --explain CODE[:LEAD]
                                      the way of the current behind a finding, in every state
  leadwright sheet FILE --out X.pdf|.svg|.png [--part steps|close-ups|meter|list|cables]...
                   [--paper a4|letter] [--turn 0|90|180|270] [--mirror] [--page N] [--scale N] [--json]
                                      the bench sheet of a build: work in order, headers with plugs,
                                      meter readings, every wire, every cable; of a board sheet its pinout
  leadwright sheet FILE --out X --pinout [--connector ID]...
                                      the board's pinout as a page to pin up, of a build too
  leadwright sheet FILE --out X --header ID
                                      one header of a build with its plugs, as a picture
  leadwright sheet FILE --out X --trouble
                                      of a build: what was noticed and tried, suspects, next trials
  leadwright sheet FILE --out X --labels [--label-size 80x16] [--flat] [--paper a4|letter]
                                      labels for both ends of each cable, as flags or flat
  leadwright plan FILE [--keep LEAD[:PLUG]]... [--json]
                                      the best place of every plug, proved, and what has none
  leadwright list FILE [--cables] [--csv]
                                      every wire end of a build, from part to pin; or every cable,
                                      with its ends, its lengths and its way
  leadwright identify FILE [--connector ID]... [--json]
                                      what meter readings in a board sheet or a build say of its pins,
                                      which of them contradict each other, and what to measure next
  leadwright diagnose [FILE] [--observe CODE...] [--not CODE...] [--tried TRIAL=RESULT...]
      [--prior CAUSE=FACTOR...] [--json]
                                      what may be wrong with a machine that does not start, by what was
                                      noticed and tried, also by the log in the file, and what to try
                                      next; a file goes first
  leadwright schema KIND              print the JSON Schema of build, board or case
  leadwright --help, --version

--json prints a report for programs; its form is in DEVELOPERS.md.
A file name that begins with a hyphen goes after --.

Exit status: 0 nothing worse than a doubt, 1 a fault, a danger, a reason to stop, or readings or
observations that contradict each other were found, 2 a file or an argument could not be used, 70 a mistake of Leadwright's own.

A finding says what the sheets know. The board's own manual and a qualified person have
the last word. Work with the mains plug pulled and never open a power supply.
`;
