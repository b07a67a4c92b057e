/**
 * Vas from resonance and electrical Q in free air (fsHz, qes) and in a tight closed test box (fctHz, qect) of known volume, m³.
 *
 * Vas = Vt (fct Qect/(fs Qes) − 1): a change of the air load between the two cancels. Losses and leaks of the box are ignored.
 * Source: R. H. Small, "Direct-Radiator Loudspeaker System Analysis", J. Audio Eng. Soc. 20, 1972 (from memory).
 *
 * Example: vasFromTestBoxM3({ fsHz: 30, qes: 0.4, fctHz: 58, qect: 0.78 }, 0.0283) = 0.0784
 */
export const vasFromTestBoxM3 = (
  measured: { readonly fsHz: number; readonly qes: number; readonly fctHz: number; readonly qect: number },
  testBoxM3: number,
): number => testBoxM3 * ((measured.fctHz * measured.qect) / (measured.fsHz * measured.qes) - 1);
