package org.plumbrow.design.drawing;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.electrical.BurialCover;
import org.plumbrow.calc.electrical.ConductorMaterial;
import org.plumbrow.calc.electrical.ConductorSize;
import org.plumbrow.design.ConnectionKind;
import org.plumbrow.design.Device;
import org.plumbrow.design.DeviceKind;
import org.plumbrow.design.Run;

/** How figures and things are written on a sheet. */
final class Say {

    static final String UNKNOWN = "not known";

    private Say() {}

    /** At most two decimals, none that say nothing. */
    static String figure(double value) {
        String plain = String.format(Locale.US, "%,.2f", value);
        return plain.replaceAll("\\.?0+$", "").replaceAll("^-0$", "0").replace("-", "\u2212");
    }

    /** ", under streets, roads, driveways, parking"; what the design calls otherwise by its own words. */
    static String under(Run run) {
        String under = run.under();
        return under == null
                ? ""
                : Arrays.stream(BurialCover.values())
                        .filter(cover -> cover.name().equals(under))
                        .findFirst()
                        .map(cover -> ", " + cover.words())
                        .orElse(", under " + under);
    }

    static String of(@Nullable Double value, String unit) {
        return value == null ? UNKNOWN : figure(value) + " " + unit;
    }

    static String of(Optional<Double> value, String unit, int decimals) {
        return value.map(known -> rounded(known, decimals) + " " + unit).orElse(UNKNOWN);
    }

    static String rounded(double value, int decimals) {
        return String.format(Locale.US, "%,." + decimals + "f", value).replace("-", "\u2212");
    }

    static String size(String label) {
        return ConductorSize.of(label).map(ConductorSize::words).orElse(label);
    }

    /** "3 × 2/0 AWG Al XHHW-2". */
    static String conductors(Run run) {
        return "%s%d × %s %s %s"
                .formatted(
                        run.sets() == 1 ? "" : run.sets() + " sets of ",
                        run.conductors(),
                        size(run.size()),
                        run.material().symbol(),
                        run.insulation().words());
    }

    static String ground(Run run) {
        if (run.groundSize() == null) {
            return UNKNOWN;
        }
        ConductorMaterial material = run.groundMaterial() == null ? run.material() : run.groundMaterial();
        return size(run.groundSize()) + " " + material.symbol();
    }

    static String raceway(Run run) {
        String way = run.raceway().words();
        return run.racewaySize() == null ? way : run.racewaySize() + " in " + way;
    }

    static String kind(DeviceKind kind) {
        return switch (kind) {
            case BREAKER -> "breaker";
            case FUSED_DISCONNECT -> "fused disconnect";
            case UNFUSED_DISCONNECT -> "disconnect without fuses";
            case PANEL -> "panel";
            case METER -> "meter";
        };
    }

    /** "D1 AC disconnect"; the name alone where it begins with the mark. */
    static String named(Device device) {
        return device.name().startsWith(device.mark()) ? device.name() : device.mark() + " " + device.name();
    }

    static String rating(Device device) {
        return figure(device.ratedA()) + " A, " + figure(device.ratedV()) + " V";
    }

    static String connection(ConnectionKind kind) {
        return switch (kind.name()) {
            case "BREAKER_AT_FAR_END" -> "breaker at the far end of the bus";
            case "BREAKER_ANYWHERE" -> "breaker anywhere on the bus";
            case "BY_SUM_OF_DEVICES" -> "breaker on the bus, by the sum of all devices";
            case "CENTER_FED_PANEL" -> "breaker at one end of a center-fed panel";
            case "SUPPLY_SIDE_TAP" -> "tap ahead of the main";
            default -> kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        };
    }

    /** "R1", "R1 to R4". */
    static String range(List<String> marks) {
        return switch (marks.size()) {
            case 0 -> "";
            case 1 -> marks.get(0);
            default -> marks.get(0) + " to " + marks.get(marks.size() - 1);
        };
    }

    static String count(int count, String one, String many) {
        return String.format(Locale.US, "%,d ", count) + (count == 1 ? one : many);
    }

    /** Feet of a length in metres. */
    static double feet(double metres) {
        return metres / 0.3048;
    }
}
