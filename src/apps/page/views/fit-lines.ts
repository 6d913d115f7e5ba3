import { Component, type ComponentChild, createRef, h } from 'preact';

interface Props {
  lines: readonly string[];
  /** Letters are never larger than this, px. */
  largestPx: number;
}

/** Lines together take no more than this share of the screen's height. */
const MOST_OF_HEIGHT = 0.26;
const TRIAL_PX = 100;

/** Lines of text as large as their place is wide; smaller only where they would push the rest off the screen. */
export class FitLines extends Component<Props> {
  readonly #place = createRef<HTMLSpanElement>();
  #watch: ResizeObserver | null = null;

  override componentDidMount(): void {
    this.#watch = new ResizeObserver(() => this.#fit());
    if (this.#place.current) this.#watch.observe(this.#place.current);
    this.#fit();
  }

  override componentDidUpdate(): void {
    this.#fit();
  }

  override componentWillUnmount(): void {
    this.#watch?.disconnect();
  }

  #fit(): void {
    const place = this.#place.current;
    if (!place) return;
    place.style.fontSize = `${TRIAL_PX}px`;
    const widths = [...place.children].map((one) => (one as HTMLElement).offsetWidth);
    const byWidth = (TRIAL_PX * place.clientWidth) / Math.max(1, ...widths);
    const byHeight = (MOST_OF_HEIGHT * innerHeight) / this.props.lines.length;
    const { largestPx } = this.props;
    place.style.fontSize = `${Math.floor(Math.min(largestPx, byWidth, byHeight))}px`;
  }

  render({ lines }: Props): ComponentChild {
    return h(
      'span',
      { ref: this.#place, class: 'fit-lines', 'aria-hidden': 'true' },
      lines.map((line) => h('span', null, line)),
    );
  }
}
