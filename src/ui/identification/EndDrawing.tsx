/** A male end seen from the side, free end to the left, axis at y = 72. */
export function Male(props: { readonly x: number }) {
  const crests = () => {
    let top = `M${props.x + 12} 46`;
    let bottom = `M${props.x + 12} 98`;
    for (let i = 0; i < 8; i++) {
      const x = props.x + 19 + i * 14;
      top += `L${x} 38L${x + 7} 50`;
      bottom += `L${x - 7} 94L${x} 106`;
    }
    return `${top} ${bottom}L${props.x + 124} 94`;
  };
  return (
    <>
      <path class="part" d={`M${props.x + 12} 46L${props.x} 52V92L${props.x + 12} 98`} />
      <path class="part" d={crests()} />
      <path class="part" d={`M${props.x + 124} 50V28H239M${props.x + 124} 94V116H239`} />
      <path class="axis" d={`M${props.x - 14} 72H239`} />
    </>
  );
}

/** A nut cut open, mouth to the right. */
export function Female() {
  let top = 'M150 40';
  let bottom = 'M150 104';
  for (let i = 0; i < 7; i++) {
    top += `L${143 - i * 14} 32L${136 - i * 14} 44`;
    bottom += `L${143 - i * 14} 112L${136 - i * 14} 100`;
  }
  return (
    <>
      <path class="cut" d={`${top} L30 44 V8 H150 Z`} />
      <path class="cut" d={`${bottom} L30 100 V128 H150 Z`} />
      <path class="axis" d="M16 72H239" />
    </>
  );
}
