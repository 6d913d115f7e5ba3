/** The code of the error that `act` throws; `taken` where it throws none. */
export function codeOf(act: () => unknown): string {
  try {
    act();
    return 'taken';
  } catch (error) {
    return (error as { code?: string }).code ?? String(error);
  }
}
