import { type JSX, Show } from 'solid-js';
import type { ThreadMeasurement } from '../../journey/5-measurement/thread-measurement';
import { coneAngle } from '../../journey/6-candidates/end-seen';
import type { Reference } from '../../journey/identification';
import { mmPerInch } from '../../quantity/length';
import { spannersBetween } from '../../standards/spanners';
import { lengthUnit } from '../identification/chosen-units';
import { diameterName } from '../identification/diameter-name';
import { decimalsFor, number, plusMinus } from '../language/format';
import { t } from '../language/language';
import './numbers.css';

export function Numbers(props: {
  readonly measurement: ThreadMeasurement;
  readonly reference: Reference | null;
}) {
  const m = () => props.measurement;
  const isFemale = () => m().end === 'female';
  const inches = () => {
    const { value, u } = m().majorDiameterMm;
    return plusMinus({ value: value / mmPerInch, u: u / mmPerInch }, 'in');
  };
  const tpi = () => {
    const { value, u } = m().pitchMm;
    const turns = mmPerInch / value;
    return plusMinus({ value: turns, u: (turns * u) / value }, 'tpi');
  };
  return (
    <dl class="numbers">
      <Row name={t().inspection.pitch} {...chosenFirst(plusMinus(m().pitchMm, 'mm'), tpi())} />
      <Row
        name={diameterName(m())}
        note={isFemale() ? t().end.overCrests : t().inspection.overCrests}
        {...chosenFirst(plusMinus(m().majorDiameterMm, 'mm'), inches())}
      />
      <Row
        name={t().inspection.taper}
        main={taperText(m())}
        also={m().taper ? `1 : 16 = ${number(1 / 16, 4)}` : undefined}
      />
      <Row
        name={t().inspection.flank}
        main={m().flankAngleDeg ? plusMinus(m().flankAngleDeg!, '°') : null}
      />
      <Show when={!isFemale()}>
        <Row
          name={t().inspection.nose}
          main={coneAngle(m()) ? plusMinus(coneAngle(m())!, '°') : null}
        />
      </Show>
      <Row
        name={t().loop.hexAcrossFlats}
        main={m().hexAcrossFlatsMm ? plusMinus(m().hexAcrossFlatsMm!, 'mm') : null}
        also={spannerText(m().hexAcrossFlatsMm)}
      />
      <Row name={t().inspection.turns} main={number(m().turns, 1)} />
      <Row name={t().inspection.hand} main={m().hand ? t().inspection[m().hand!] : null} />
      <Row name={t().inspection.starts} main={m().starts === null ? null : String(m().starts)} />
      <Show when={props.reference}>
        {(reference) => (
          <>
            <Show when={reference().axisHeightMm !== null}>
              <Row
                name={isFemale() ? t().inspection.mouthHeight : t().inspection.height}
                main={`${number(reference().axisHeightMm!, 1)} mm`}
              />
            </Show>
            <Show when={reference().cameraHeightMm !== null}>
              <Row
                name={t().inspection.camera}
                main={`${number(reference().cameraHeightMm!, 0)} mm`}
              />
            </Show>
            <Show when={reference().tiltDeg !== null}>
              <Row name={t().inspection.tilt} main={`${number(reference().tiltDeg!, 1)}°`} />
            </Show>
            <Show when={reference().field}>
              {(field) => <Row name={t().inspection.field} main={t().card[field()]} />}
            </Show>
          </>
        )}
      </Show>
    </dl>
  );
}

/** Whoever measures in inches at the bench reads inches first. */
const chosenFirst = (metric: string, inch: string) =>
  lengthUnit() === 'mm' ? { main: metric, also: inch } : { main: inch, also: metric };

/** Spanners within the interval that is shown, 2 u to either side. */
function spannerText(acrossFlats: ThreadMeasurement['hexAcrossFlatsMm']): string | undefined {
  if (!acrossFlats) return undefined;
  const { value, u } = acrossFlats;
  const sizes = spannersBetween(value - 2 * u, value + 2 * u);
  if (sizes.length === 0 || sizes.length > mostSpanners) return undefined;
  const names = sizes.map(({ system, name }) => `${name} ${system === 'metric' ? 'mm' : 'in'}`);
  return `${t().loop.spanner}: ${names.join(', ')}`;
}

/** A list of more tells nobody which to take. */
const mostSpanners = 4;

function taperText(m: ThreadMeasurement): string | null {
  if (!m.taper) return null;
  const decimals = decimalsFor(2 * m.taper.u);
  return `${number(m.taper.value, decimals)} ± ${number(2 * m.taper.u, decimals)} ${t().inspection.taperUnit}`;
}

function Row(props: {
  readonly name: string;
  readonly main: string | null;
  readonly also?: string | undefined;
  readonly note?: string;
}): JSX.Element {
  return (
    <div>
      <dt>
        {props.name}
        <Show when={props.note}>
          <span class="small soft"> {props.note}</span>
        </Show>
      </dt>
      <dd classList={{ soft: props.main === null }}>
        {props.main ?? t().inspection.unresolved}
        <Show when={props.also}>
          <span class="small soft">{props.also}</span>
        </Show>
      </dd>
    </div>
  );
}
