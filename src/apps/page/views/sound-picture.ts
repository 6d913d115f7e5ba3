import { Component, type ComponentChild, createRef, h } from 'preact';

interface Props {
  /** When the events of the mode happen, s. */
  marksS: readonly number[];
  /** How far the sound has come, s; null while it is silent. */
  position: (() => number) | null;
  label: string;
}

/** So much of the sound is seen at once, s; events of 300 a second are still apart. */
const SEEN_S = 0.16;
const WIDTH = 320;
const HEIGHT = 56;

/** The events of a sound as strokes that pass a line at the moment they are heard. */
export class SoundPicture extends Component<Props> {
  readonly #marks = createRef<SVGPathElement>();
  #frame = 0;

  override componentDidMount(): void {
    this.#follow();
  }

  override componentDidUpdate(): void {
    this.#follow();
  }

  override componentWillUnmount(): void {
    cancelAnimationFrame(this.#frame);
  }

  #follow(): void {
    cancelAnimationFrame(this.#frame);
    const { position } = this.props;
    this.#draw(position?.() ?? 0);
    if (position)
      this.#frame = requestAnimationFrame(() => {
        this.#follow();
      });
  }

  #draw(nowS: number): void {
    const { marksS } = this.props;
    const at = (markS: number): number => WIDTH * (0.5 + (markS - nowS) / SEEN_S);
    const seen = marksS.map(at).filter((x) => x >= 0 && x <= WIDTH);
    const strokes = seen.map((x) => `M${x.toFixed(1)} 8V${HEIGHT - 8}`).join('');
    this.#marks.current?.setAttribute('d', strokes);
  }

  render({ label }: Props): ComponentChild {
    return h(
      'svg',
      {
        class: 'sound-picture',
        viewBox: `0 0 ${WIDTH} ${HEIGHT}`,
        role: 'img',
        'aria-label': label,
      },
      [
        h('path', { class: 'sound-marks', ref: this.#marks }),
        h('path', { class: 'sound-now', d: `M${WIDTH / 2} 0V${HEIGHT}` }),
      ],
    );
  }
}
