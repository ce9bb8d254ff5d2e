import { number } from '../language/format';
import { temperatures } from './elastomers';

/** 'NBR −30 … 100 °C, …' */
export const temperatureText = (): string =>
  temperatures
    .map(({ elastomer, minC, maxC }) => `${elastomer} ${number(minC, 0)} … ${number(maxC, 0)} °C`)
    .join(', ');
