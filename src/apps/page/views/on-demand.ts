import { Component, type ComponentChild, h } from 'preact';

interface Props {
  title: string;
  class: string;
  content: () => ComponentChild;
}

/** A part that is only made when somebody opens it. */
export class OnDemand extends Component<Props, { open: boolean }> {
  override state = { open: false };

  render({ title, class: name, content }: Props, { open }: { open: boolean }): ComponentChild {
    const onToggle = (event: Event): void =>
      this.setState({ open: (event.currentTarget as HTMLDetailsElement).open });
    return h('details', { class: name, onToggle }, [
      h('summary', null, title),
      open ? content() : null,
    ]);
  }
}
