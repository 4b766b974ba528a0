package org.plumbrow.calc.electrical;

import java.util.List;
import org.plumbrow.calc.electrical.Check.Input;

/**
 * The voltage at the inverter on a sunny day: the service's plus what the array's own current adds on the way. Above Range A
 * of ANSI C84.1 is a remark, above Range B or the inverter's high-voltage trip (IEEE 1547, 1.10 of nominal) fails.
 */
public final class VoltageRise {

    private VoltageRise() {}

    /**
     * @param serviceV the highest line-to-line voltage read at the service
     * @param riseV at full output, power factor 1
     */
    public static Check atInverter(Service service, double serviceV, double riseV) {
        double volts = serviceV + riseV;
        double tripV = GridTiming.highTripPu() * service.lineV();
        double bandB = service.lineLimits().bMostV();
        Check check = Check.atMost(
                "Voltage at the inverter at full output",
                "ANSI C84.1; IEEE 1547",
                volts,
                Math.min(bandB, tripV),
                "V",
                List.of(
                        Input.of("highest voltage read at the service", serviceV, "V"),
                        Input.of("rise along the run, power factor 1", riseV, "V"),
                        Input.of("Range A ends at", service.lineLimits().aMostV(), "V"),
                        Input.of("Range B ends at", bandB, "V"),
                        Input.of("inverter leaves the grid at", tripV, "V")),
                "Use a larger conductor, move the inverter nearer, or ask the utility to lower the tap.");
        boolean aboveA = volts > service.lineLimits().aMostV();
        return aboveA && check.verdict() == Verdict.PASS
                ? check.but(
                        Verdict.REMARK,
                        "Above Range A: tell the utility, and expect the inverter to leave the grid on some days.")
                : check;
    }
}
