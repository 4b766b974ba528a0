package breach.calc;

import com.google.ortools.sat.CpModel;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Random;
import org.springframework.util.StringUtils;

/** Breaks every rule of the core on purpose. */
final class ImpureYield {

    private ImpureYield() {}

    static LocalDate today() {
        return LocalDate.now();
    }

    static double guess() {
        return new Random().nextDouble();
    }

    static CpModel model() {
        return new CpModel();
    }

    static String read(Path file) {
        return StringUtils.capitalize(file.toString());
    }
}
