/** A filling as it lies in the cabinet. */
export interface FibreFill {
  /** Flow resistivity σ: the one number that sets volume gain and damping, Pa·s/m². */
  readonly resistivityPaSPerM2: number;
  /** Mass of fill over the space it takes, kg/m³. */
  readonly bulkDensityKgPerM3: number;
  /** Of the solid material, kg/m³ and J/(kg·K). */
  readonly solidDensityKgPerM3: number;
  readonly solidHeatJPerKgK: number;
  /** Where the air stops following the fibres' temperature; `thermalCornerHz(σ).usual` unless it is known better, Hz. */
  readonly thermalCornerHz: number;
}
