import { For } from 'solid-js';
import { type CropFeature, plateFrom, type ThreadCrop } from '../../handover/crop-drawing';
import { featureName } from '../identification/drawn-features';
import { t } from '../language/language';

/** A figure is up to 0.63 of its size wide. */
export const plateWidth = (text: string) => text.length * 8.2 + 6;

/** What the photo shows of the seat: its lines, heavier than the dimensions', and its name. */
export function CropFeatures(props: { readonly crop: ThreadCrop; readonly asked: boolean }) {
  return (
    <For each={props.crop.features}>
      {(feature) => {
        const d = feature.lines.map((line) => `M${line.map((at) => at.join(' ')).join('L')}`);
        const leader = `M${feature.leader.map((at) => at.join(' ')).join('L')}`;
        const name = () => featureName(feature.seat);
        const from = () => plateFrom(feature.plate, plateWidth(name()), props.crop);
        const y = feature.plate.at[1];
        return (
          <g class="crop-feature" classList={{ asked: props.asked }}>
            <path class="casing" d={d.join('') + leader} />
            <path class="line" d={leader} />
            <path class="line heavy" d={d.join('')} />
            <rect x={from()} y={y - 10} width={plateWidth(name())} height={20} />
            <text x={from() + plateWidth(name()) / 2} y={y + 4.5} text-anchor="middle">
              {name()}
            </text>
          </g>
        );
      }}
    </For>
  );
}

/** Where the drawn seat and its name lie, shares of the drawing: the way to the question about it. */
export function FeatureButton(props: {
  readonly crop: ThreadCrop;
  readonly feature: CropFeature;
  readonly onAsk: () => void;
}) {
  const box = () => {
    const { crop, feature } = props;
    const width = plateWidth(featureName(feature.seat));
    const from = plateFrom(feature.plate, width, crop);
    const y = feature.plate.at[1];
    const points = [...feature.lines.flat(), [from, y - 10], [from + width, y + 10]];
    const [xs, ys] = [points.map((at) => at[0]!), points.map((at) => at[1]!)];
    const [x0, y0] = [Math.min(...xs), Math.min(...ys)];
    return {
      left: `${(100 * x0) / crop.width}%`,
      top: `${(100 * y0) / crop.height}%`,
      width: `${(100 * (Math.max(...xs) - x0)) / crop.width}%`,
      height: `${(100 * (Math.max(...ys) - y0)) / crop.height}%`,
    };
  };
  return (
    <button
      type="button"
      class="feature-button"
      style={box()}
      aria-label={`${featureName(props.feature.seat)}: ${t().loop.seatDrawn.toQuestion}`}
      onClick={() => props.onAsk()}
    />
  );
}
