/** Cautions for the workshop and a few facts of the trade, at the end of the sheet. */
export function Advice() {
  return (
    <section className="build-section" aria-labelledby="build-advice">
      <h2 id="build-advice">Before you cut</h2>
      <ul className="build-advice">
        <li>
          Saws and routers: read the maker’s instructions, keep guard and riving knife on, use push sticks, wear eye and
          hearing protection, and pull the plug before you change a blade or bit. No gloves or loose sleeves near a
          turning blade.
        </li>
        <li>
          Dust of wood and MDF harms the lungs: extract it at the machine and wear a mask that is made for fine dust.
        </li>
        <li>
          Fumes of lacquer and glue can harm and burn: air the room, keep flames and sparks away, and follow the label.
          Oily rags can catch fire by themselves; dry them spread out.
        </li>
        <li>A finished cabinet is heavy: lift with two people, and make sure that it cannot topple.</li>
        <li>Local rules and the maker’s instructions go before anything on this sheet.</li>
      </ul>
      <h3>From the workshop</h3>
      <p className="build-about">Common practice, no source.</p>
      <ul className="build-advice">
        <li>Cut a test piece first and measure it; a real board is seldom exactly as thick as it is called.</li>
        <li>Drill for every screw; in MDF drive its last turn by hand, or it strips the hole.</li>
        <li>Filling is cut to fit round a brace and held by friction; keep it clear of the port and of the cone.</li>
        <li>A crimped terminal gets a tug before the cabinet is closed.</li>
      </ul>
    </section>
  );
}
