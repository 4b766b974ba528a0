package org.plumbrow.calc.planning;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.plumbrow.calc.planning.engine.Effort;
import org.plumbrow.calc.planning.engine.Planner;
import org.plumbrow.calc.planning.engine.Watch;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Order;

/**
 * The first plan of a process and what it costs: {@code first 300} in a new process each time. {@code growth
 * 150,300,600,1200}: one decoding by size, and the exponent. {@code memory 300}: the most memory of the process (Linux) with
 * the usual work on a branch, the solver's included.
 */
public final class FirstPlanFigures {

    private FirstPlanFigures() {}

    public static void main(String[] arguments) throws IOException {
        List<Integer> sizes =
                Stream.of(arguments[1].split(",")).map(Integer::valueOf).toList();
        switch (arguments[0]) {
            case "first" -> first(sizes.get(0));
            case "growth" -> growth(sizes);
            case "memory" -> memory(sizes.get(0));
            default -> throw new IllegalArgumentException("first, growth or memory");
        }
    }

    private static void first(int size) {
        PlanningProblem problem = LargeBranch.of(size, 1);
        long begun = System.nanoTime();
        Plan plan = SerialPlanner.plan(problem);
        double made = (System.nanoTime() - begun) / 1e6;
        int breaches = PlanCheck.breaches(problem, plan).size();
        System.out.printf(
                Locale.ROOT,
                "projects %d first plan %.1f ms, with its check %.1f ms, breaches %d%n",
                size,
                made,
                (System.nanoTime() - begun) / 1e6,
                breaches);
    }

    private static void growth(List<Integer> sizes) {
        double before = 0;
        int tasksBefore = 0;
        for (int size : sizes) {
            PlanningProblem problem = LargeBranch.of(size, 1);
            BranchModel model = BranchModel.of(problem, SerialPlanner.plan(problem), Optional.empty());
            double best = decoding(model);
            System.out.printf(
                    Locale.ROOT,
                    "projects %d activities %d decoding %.3f ms exponent %s%n",
                    size,
                    model.size(),
                    best,
                    before == 0
                            ? "-"
                            : String.format(
                                    Locale.ROOT,
                                    "%.2f",
                                    Math.log(best / before) / Math.log((double) model.size() / tasksBefore)));
            before = best;
            tasksBefore = model.size();
        }
    }

    /** The fastest of many: what other programs on the machine take is not counted. */
    private static double decoding(BranchModel model) {
        Decoder decoder = new Decoder(model);
        Dates dates = decoder.emptyDates();
        Order order = Order.urgent(model);
        double best = Double.MAX_VALUE;
        for (int run = 0; run < 300; run++) {
            long begun = System.nanoTime();
            decoder.decode(order, dates);
            best = Math.min(best, (System.nanoTime() - begun) / 1e6);
        }
        return best;
    }

    private static void memory(int size) throws IOException {
        PlanningProblem problem = LargeBranch.of(size, 1);
        Planner.plan(problem, Optional.empty(), new Effort(1, 500, 3, 20, 0, 2), Watch.NOBODY);
        Path status = Path.of("/proc/self/status");
        String most = Files.exists(status)
                ? Files.readAllLines(status).stream()
                        .filter(line -> line.startsWith("VmHWM"))
                        .findFirst()
                        .orElse("")
                : "not told by this system";
        System.out.println("projects " + size + " " + most);
    }
}
