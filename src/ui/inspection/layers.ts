export const layerNames = ['markers', 'outline', 'axis', 'contact', 'crests', 'ends'] as const;
export type LayerName = (typeof layerNames)[number];
export const boreLayers: readonly LayerName[] = ['markers', 'outline', 'axis'];
