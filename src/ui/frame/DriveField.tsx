import { QuantityField } from '../fields/index.ts';
import { useWorkbench } from '../useWorkbench.ts';

/** Voltage at every amplifier channel: the one drive that holds for all that is shown. */
export function DriveField() {
  const driveV = useWorkbench((s) => s.project.chain.driveV);
  return (
    <span className="header-drive">
      <span className="frame-soft">drive</span>
      <QuantityField
        label="Drive at every amplifier channel, volts rms"
        kind="voltage"
        value={driveV}
        least={0.01}
        greatest={200}
        note="2.83 V is 1 W into 8 Ω. High drive overheats coils and hurts ears."
        command={(value) => ({ type: 'set-drive', driveV: value })}
      />
    </span>
  );
}
