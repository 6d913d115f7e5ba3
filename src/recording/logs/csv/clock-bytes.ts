const COLON = 58;
const DASH = 45;
const SLASH = 47;
const POINT = 46;
const COMMA = 44;
const LETTER_T = 84;
const LETTER_Z = 90;
const SPACE = 32;
const DAY_S = 86_400;

/**
 * Reads `hh:mm:ss.fff`, alone or behind a date with the year first, without making strings. Anything
 * else is left to the careful reader.
 */
export class ClockBytes {
  /** Place behind the clock after a success. */
  at = 0;
  private dateKey = -1;
  private dateS = 0;

  /**
   * Seconds at `bytes[from]` (since 1970 with a date, else of the day); NaN for any other form.
   *
   * @param delimiter byte between the columns, which no part of the clock may be
   */
  read(bytes: Uint8Array, from: number, delimiter: number): number {
    this.at = from;
    let day = 0;
    let hours = this.whole(bytes);
    const mark = bytes[this.at];
    if (hours > 999 && (mark === DASH || mark === SLASH)) {
      day = this.date(bytes, hours, mark);
      const gap = bytes[this.at];
      if (Number.isNaN(day) || (gap !== LETTER_T && (gap !== SPACE || delimiter === SPACE))) {
        return Number.NaN;
      }
      this.at++;
      hours = this.whole(bytes);
    }
    if (hours < 0 || bytes[this.at] !== COLON) return Number.NaN;
    this.at++;
    const minutes = this.whole(bytes);
    if (minutes < 0 || bytes[this.at] !== COLON) return Number.NaN;
    this.at++;
    const seconds = this.whole(bytes);
    if (seconds < 0) return Number.NaN;
    const fraction = this.fraction(bytes, delimiter);
    if (bytes[this.at] === LETTER_Z) this.at++;
    return day + hours * 3600 + (minutes * 60 + (seconds + fraction));
  }

  /** A whole number; -1 where there is none. */
  private whole(bytes: Uint8Array): number {
    let p = this.at;
    let value = 0;
    let digit = (bytes[p] as number) - 48;
    while (digit >= 0 && digit <= 9) {
      value = value * 10 + digit;
      digit = (bytes[++p] as number) - 48;
    }
    const none = p === this.at || p - this.at > 9;
    this.at = p;
    return none ? -1 : value;
  }

  private fraction(bytes: Uint8Array, delimiter: number): number {
    const mark = bytes[this.at] as number;
    if (mark === delimiter || (mark !== POINT && mark !== COMMA)) return 0;
    const first = ++this.at;
    const digits = this.whole(bytes);
    return digits < 0 ? Number.NaN : digits / 10 ** (this.at - first);
  }

  /** Seconds since 1970 at the start of the day; the last date is remembered. */
  private date(bytes: Uint8Array, year: number, mark: number): number {
    this.at++;
    const month = this.whole(bytes);
    if (month < 1 || month > 12 || bytes[this.at] !== mark) return Number.NaN;
    this.at++;
    const day = this.whole(bytes);
    if (day < 1 || day > 31) return Number.NaN;
    const key = (year * 100 + month) * 100 + day;
    if (key !== this.dateKey) {
      this.dateKey = key;
      this.dateS = Math.floor(Date.UTC(year, month - 1, day) / 1000 / DAY_S) * DAY_S;
    }
    return this.dateS;
  }
}
