package org.plumbrow.design.part;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.electrical.BurialCover;
import org.plumbrow.calc.electrical.ConductorMaterial;
import org.plumbrow.calc.electrical.ConductorSize;
import org.plumbrow.calc.electrical.ConduitFill;
import org.plumbrow.calc.electrical.Insulation;
import org.plumbrow.calc.electrical.Raceway;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.design.ConnectionKind;
import org.plumbrow.design.DeviceKind;
import org.plumbrow.design.Flow;
import org.plumbrow.design.PlaceKind;
import org.plumbrow.web.Option;

/** The lists of a design's fields that are the same everywhere. */
final class Choices {

    private Choices() {}

    private static <E extends Enum<E>> List<Option> of(E[] all, Function<E, String> words) {
        return Arrays.stream(all)
                .map(one -> new Option(one.name(), words.apply(one)))
                .toList();
    }

    private static List<Option> said(List<String> values) {
        return values.stream().map(value -> new Option(value, value)).toList();
    }

    static List<Option> services() {
        return of(Service.values(), Service::words);
    }

    static List<Option> mountings() {
        return of(Mounting.values(), Mounting::words);
    }

    static List<Option> portrait() {
        return List.of(new Option("yes", "up the slope"), new Option("no", "along the row"));
    }

    static List<Option> flows() {
        return of(Flow.values(), Flow::words);
    }

    static List<Option> sizes() {
        return Arrays.stream(ConductorSize.values())
                .map(size -> new Option(size.label(), size.words()))
                .toList();
    }

    static List<Option> materials() {
        return of(ConductorMaterial.values(), ConductorMaterial::words);
    }

    static List<Option> insulations() {
        return of(Insulation.values(), Insulation::words);
    }

    static List<Option> raceways() {
        return of(Raceway.values(), Raceway::words);
    }

    static List<Option> tradeSizes() {
        return ConduitFill.tradeSizes().stream()
                .map(size -> new Option(size, size + " in"))
                .toList();
    }

    static List<Option> covers() {
        return of(BurialCover.values(), BurialCover::words);
    }

    static List<Option> terminals() {
        return List.of(new Option("60", "60 °C"), new Option("75", "75 °C"), new Option("90", "90 °C"));
    }

    static List<Option> devices() {
        return of(DeviceKind.values(), DeviceKind::words);
    }

    static List<Option> openers() {
        return said(List.of("anybody", "the utility", "qualified people"));
    }

    static List<Option> places() {
        return of(PlaceKind.values(), PlaceKind::words);
    }

    static List<Option> connections() {
        return of(ConnectionKind.values(), ConnectionKind::words);
    }
}
