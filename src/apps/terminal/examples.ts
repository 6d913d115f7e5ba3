/** What stands first in `arc-transfer --help`: one line for each kind of user. */
export const MAIN_EXAMPLES = `Examples
  A trainer with a phone recording of a student's weld, and the dial read off the machine:
    arc-transfer classify weld.wav --set-voltage 18.5 --wire-diameter 0.9mm --gas "Ar+18CO2"
  A robot cell with a voltage and current log; the status of the process says whether it went wrong:
    arc-transfer classify seam.csv --expect spray --fail-on disagrees,unsure,no-arc
  A researcher with a folder of recordings, one JSON document a line:
    arc-transfer classify recordings/ --json --out results.ndjson
`;
