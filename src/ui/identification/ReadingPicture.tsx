import type { JSX } from 'solid-js';
import type { AskableKind } from '../../journey/6-candidates/reading-choices';
import { Female, Male } from './EndDrawing';
import './reading-picture.css';

/** How to take a reading: own line drawings; the accent is the tool. Decorative: the words say the same. */
export function ReadingPicture(props: {
  readonly kind: AskableKind;
  readonly end?: 'male' | 'female';
}) {
  const picture = () =>
    (props.end === 'female' ? inBore[props.kind] : undefined) ?? pictures[props.kind];
  return (
    <svg class="reading-picture" viewBox="0 0 240 130" aria-hidden="true">
      {picture()()}
    </svg>
  );
}

const pictures: Readonly<Record<AskableKind, () => JSX.Element>> = {
  'pitch-gauge': () => (
    <>
      <Male x={70} />
      <path class="tool" d={blade()} />
      <circle class="tool-line" cx="72" cy="15" r="3.5" />
    </>
  ),
  'caliper-od': () => (
    <>
      <Male x={70} />
      <path class="tool" d="M132 38 H150 V22 H168 V4 H118 L126 30 Z" />
      <path class="tool" d="M132 106 H150 V120 H168 V129 H118 L126 112 Z" />
      <path
        class="arrow"
        d="M141 44 V100 M141 44 l-4 7 M141 44 l4 7 M141 100 l-4 -7 M141 100 l4 -7"
      />
    </>
  ),
  'caliper-id': () => (
    <>
      <Female />
      <path class="tool" d="M190 8 H214 V30 L176 52 H112 V44 H150 L190 26 Z" />
      <path class="tool" d="M190 124 H214 V104 L176 92 H112 V99 H150 L190 110 Z" />
      <path class="arrow" d="M128 46 V98 M128 46 l-4 7 M128 46 l4 7 M128 98 l-4 -7 M128 98 l4 -7" />
    </>
  ),
  'rule-od': () => (
    <>
      <Male x={70} />
      <path class="tool" d="M124 2 H164 V128 H124 Z" />
      <path
        class="tool-line"
        d="M124 12h10m-10 8h6m-6 8h6m-6 8h14m-14 8h6m-6 8h6m-6 8h10m-10 8h6m-6 8h6m-6 8h14m-14 8h6m-6 8h6m-6 8h10m-10 8h6"
      />
      <path class="sight" d="M60 38 H190 M60 106 H190" />
    </>
  ),
  'tube-od': () => (
    <>
      <path class="part" d="M96 46 H239 M96 98 H239 M96 46 V98" />
      <path class="part" d="M4 30 H60 V52 H96 M4 114 H60 V92 H96" />
      <path class="axis" d="M4 72H239" />
      <path class="tool" d="M156 46 H174 V28 H192 V4 H142 L150 34 Z" />
      <path class="tool" d="M156 98 H174 V116 H192 V129 H142 L150 108 Z" />
      <path class="arrow" d="M165 52 V92 M165 52 l-4 7 M165 52 l4 7 M165 92 l-4 -7 M165 92 l4 -7" />
    </>
  ),
  'turns-over': () => (
    <>
      <Male x={70} />
      <path class="tool" d="M60 8 H230 V34 H60 Z" />
      <path class="tool-line" d="M89 34v-12m14 12v-7m14 7v-7m14 7v-7m14 7v-7m14 7v-12" />
      <path class="sight" d="M89 34V118M173 34V118" />
    </>
  ),
  'cone-size': () => (
    <>
      <path class="part" d="M239 40H150L90 66V78L150 104H239" />
      <path class="axis" d="M60 72H239" />
      <path class="arrow" d="M150 40V104M150 40l-4 7M150 40l4 7M150 104l-4-7M150 104l4-7" />
      <path class="arrow" d="M90 50V66M90 94V78M90 66l-4-7M90 66l4-7M90 78l-4 7M90 78l4 7" />
      <path class="arrow" d="M90 22H150M90 22l7-4M90 22l7 4M150 22l-7-4M150 22l-7 4" />
      <path class="sight" d="M90 18V62M150 18V38" />
    </>
  ),
  'nose-od': () => (
    <>
      <Female />
      <path class="part" d="M8 52H104L166 58V86L104 92H8" />
      <path class="arrow" d="M182 58V86M182 58l-4 7M182 58l4 7M182 86l-4-7M182 86l4-7" />
      <path class="sight" d="M166 58H190M166 86H190" />
    </>
  ),
  hex: () => (
    <>
      <path class="part" d="M80 72L105 28H155L180 72L155 116H105Z" />
      <circle class="part" cx="130" cy="72" r="22" />
      <path class="tool" d="M96 20H200V28H96ZM96 116H200V124H96Z" />
      <path class="arrow" d="M196 30V114" />
    </>
  ),
  flank: () => (
    <>
      <Male x={70} />
      <path class="tool" d="M84 4 H170 V20 L164 38 L157 50 L150 38 L140 20 H84 Z" />
      <path class="sight" d="M157 50 L146 30 M157 50 L168 30" />
    </>
  ),
  taper: () => (
    <>
      <Male x={70} />
      <path class="tool" d="M60 22 H230 V33 H60 Z" />
      <path class="sight" d="M60 106 H230" />
    </>
  ),
  'flange-thickness': () => <FlangeHead />,
  'bolt-spacing': () => (
    <>
      <FlangeHead />
      <circle class="tool" cx="150" cy="24" r="8" />
      <circle class="tool" cx="150" cy="120" r="8" />
      <path class="arrow" d="M150 24V120" />
    </>
  ),
  seat: () => <Lens />,
  'seat-gauge': () => <Lens />,
  'end-type': () => <Lens />,
  'crest-form': () => <Lens />,
  marking: () => <Lens />,
  hand: () => <Lens />,
};

/** Read with a gauge or plug inside a female end. */
const inBore: Partial<Record<AskableKind, () => JSX.Element>> = {
  'pitch-gauge': () => <Plug whole={false} />,
  flank: () => <Plug whole={false} />,
  taper: () => <Plug whole />,
};

/** A blade, or a straight plug, in the bore of `Female`. */
function Plug(props: { readonly whole: boolean }) {
  return (
    <>
      <Female />
      <path class="tool" d={props.whole ? 'M100 46H214V98H100Z' : 'M100 44H214V62H100Z'} />
    </>
  );
}

function FlangeHead() {
  return (
    <>
      <path class="part" d="M90 14H120V50H239M90 130V14M90 130H120V94H239" />
      <path class="axis" d="M70 72H239" />
      <path class="arrow" d="M90 6H120M90 6l6 -4M90 6l6 4M120 6l-6 -4M120 6l-6 4" />
    </>
  );
}

/** Looked at closely. */
function Lens() {
  return (
    <>
      <Male x={100} />
      <path class="tool-line" d="M92 46 L70 58 V86 L92 98" />
      <circle class="lens" cx="70" cy="72" r="42" />
      <path class="tool-line lens-grip" d="M40 102 L14 126" />
    </>
  );
}

/** A gauge blade whose teeth sit in the thread of `Male`, just clear of it. */
function blade(): string {
  let teeth = '';
  for (let i = 7; i >= 0; i--) teeth += `L${96 + i * 14} 46L${89 + i * 14} 34`;
  return `M62 6H214V34H201${teeth}L82 44L62 24Z`;
}
