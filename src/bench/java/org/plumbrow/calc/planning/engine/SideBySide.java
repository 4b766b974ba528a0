package org.plumbrow.calc.planning.engine;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import org.plumbrow.calc.planning.Costing;
import org.plumbrow.calc.planning.LargeBranch;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanCheck;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.exact.WholeSolver;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Order;
import org.plumbrow.calc.planning.search.PlanSearch;

/**
 * The engine, its search alone, the whole branch in CP-SAT and in Choco: same branches, same seconds, same check.
 * Arguments: sizes and seeds, both with commas, seconds, and unless all are meant the engines. Each run is one line of
 * {@code side-by-side-SECONDS.csv}; a run that was stopped goes on behind the last line, so a line is taken out to be
 * measured anew. The best plan that any run ever found is kept in {@code records.csv}. Both lie in
 * {@code src/bench/resources/planning}.
 */
public final class SideBySide {

    private static final Path FOLDER = Path.of("src/bench/resources/planning");
    private static final Path RECORDS = FOLDER.resolve("records.csv");
    private static final String RECORDS_HEAD = "projects,seed,late,effort";
    private static final int THREADS = 2;

    /** Who plans. */
    private enum Engine {
        ENGINE,
        SEARCH,
        SOLVER,
        OTHER
    }

    /** One run. @param bound of the engine alone; nobody else proves one that holds */
    private record Line(int size, int seed, Engine engine, long late, long bound, double seconds) {

        static Line of(String text) {
            String[] cells = text.split(",");
            return new Line(
                    Integer.parseInt(cells[0]),
                    Integer.parseInt(cells[1]),
                    Engine.valueOf(cells[2]),
                    Long.parseLong(cells[3]),
                    Long.parseLong(cells[4]),
                    Double.parseDouble(cells[5]));
        }

        String text() {
            return String.format(Locale.ROOT, "%d,%d,%s,%d,%d,%.1f%n", size, seed, engine, late, bound, seconds);
        }

        String branch() {
            return size + "," + seed;
        }
    }

    private final PlanningProblem problem;
    private final double seconds;
    private final BranchModel model;
    private final Dates urgent;
    private long bound;

    private SideBySide(PlanningProblem problem, double seconds) {
        this.problem = problem;
        this.seconds = seconds;
        model = BranchModel.of(problem, SerialPlanner.plan(problem), Optional.empty());
        Decoder decoder = new Decoder(model);
        urgent = decoder.emptyDates();
        decoder.decode(Order.urgent(model), urgent);
    }

    public static void main(String[] arguments) throws IOException {
        double seconds = Double.parseDouble(arguments[2]);
        List<Engine> engines = arguments.length > 3
                ? Arrays.stream(arguments[3].split(",")).map(Engine::valueOf).toList()
                : List.of(Engine.values());
        Path file = FOLDER.resolve("side-by-side-%s.csv".formatted(arguments[2]));
        Set<String> done = new HashSet<>();
        read(file).forEach(line -> done.add(line.branch() + line.engine()));
        for (int size : numbers(arguments[0])) {
            for (int seed : numbers(arguments[1])) {
                for (Engine engine : engines) {
                    if (!done.contains(size + "," + seed + engine)) {
                        Line line = measured(size, seed, engine, seconds);
                        Files.writeString(file, line.text(), StandardOpenOption.CREATE, StandardOpenOption.APPEND);
                        System.out.print(line.text());
                        keepRecord(line);
                    }
                }
            }
        }
        print(read(file));
    }

    private static List<Integer> numbers(String list) {
        return Arrays.stream(list.split(",")).map(Integer::valueOf).toList();
    }

    private static List<Line> read(Path file) throws IOException {
        return Files.exists(file)
                ? Files.readAllLines(file).stream().map(Line::of).toList()
                : List.of();
    }

    private static Line measured(int size, int seed, Engine engine, double seconds) {
        SideBySide run = new SideBySide(LargeBranch.of(size, seed), seconds);
        long begun = System.nanoTime();
        Plan plan = run.plan(engine, () -> (System.nanoTime() - begun) / 1e9 >= seconds);
        double took = (System.nanoTime() - begun) / 1e9;
        long late = plan.weightedHalfDaysLate();
        if (!PlanCheck.breaches(run.problem, plan).isEmpty() || run.bound > late) {
            throw new IllegalStateException(
                    "a plan or a bound that does not hold: %d, %d, %s".formatted(size, seed, engine));
        }
        return new Line(size, seed, engine, late, run.bound, took);
    }

    private Plan plan(Engine engine, BooleanSupplier stopped) {
        return switch (engine) {
            case ENGINE -> ours(stopped);
            case SEARCH ->
                PlanSearch.plan(problem, Optional.empty(), new PlanSearch.Effort(decodingsOfTheTime(), 1), stopped);
            case SOLVER -> decoded(new WholeSolver(model, urgent).best(seconds));
            case OTHER -> decoded(new OtherSolver(model, urgent).best(stopped));
        };
    }

    private Plan ours(BooleanSupplier stopped) {
        Planned planned = Planner.plan(
                problem, Optional.empty(), Effort.background(problem.projects().size(), THREADS), new Watch() {
                    @Override
                    public boolean isStopped() {
                        return stopped.getAsBoolean();
                    }

                    @Override
                    public void progress(String stage, int done, int of, long lateness) {}
                });
        bound = planned.lowerBound();
        return planned.plan();
    }

    /** As many orders as fit, so that it has cooled down when the time is over. */
    private int decodingsOfTheTime() {
        Decoder decoder = new Decoder(model);
        Dates dates = decoder.emptyDates();
        Order order = Order.urgent(model);
        long begun = System.nanoTime();
        int tried = 0;
        while (System.nanoTime() - begun < 500_000_000L) {
            decoder.decode(order, dates);
            tried++;
        }
        return (int) Math.max(100, tried * 2 * seconds * 0.9);
    }

    private Plan decoded(Optional<Order> order) {
        Costing costing = new Costing(problem, Optional.empty());
        Plan start = PlanSearch.decoded(model, costing, Order.urgent(model)).plan();
        return order.map(better -> PlanSearch.decoded(model, costing, better).plan())
                .filter(plan -> plan.weightedHalfDaysLate() < start.weightedHalfDaysLate())
                .orElse(start);
    }

    private static void keepRecord(Line line) throws IOException {
        Map<String, String> best = records();
        String known = best.get(line.branch());
        if (known == null || Long.parseLong(known.split(",")[0]) > line.late()) {
            best.put(line.branch(), "%d,%s %.0f s".formatted(line.late(), line.engine(), line.seconds()));
            String rows = best.entrySet().stream()
                    .sorted(Map.Entry.comparingByKey(SideBySide::byBranch))
                    .map(row -> row.getKey() + "," + row.getValue() + "\n")
                    .collect(Collectors.joining());
            Files.createDirectories(RECORDS.getParent());
            Files.writeString(RECORDS, RECORDS_HEAD + "\n" + rows);
        }
    }

    private static int byBranch(String one, String two) {
        return Arrays.compare(
                numbers(one).stream().mapToInt(Integer::intValue).toArray(),
                numbers(two).stream().mapToInt(Integer::intValue).toArray());
    }

    /** Of each branch: the rest of its row. */
    private static Map<String, String> records() throws IOException {
        Map<String, String> best = new HashMap<>();
        if (Files.exists(RECORDS)) {
            Files.readAllLines(RECORDS).stream().skip(1).forEach(row -> {
                String[] cells = row.split(",", 3);
                best.put(cells[0] + "," + cells[1], cells[2]);
            });
        }
        return best;
    }

    private static void print(List<Line> lines) throws IOException {
        Map<String, String> best = records();
        Map<String, List<Line>> groups = new TreeMap<>(lines.stream()
                .collect(Collectors.groupingBy(line -> "%4d %s".formatted(line.size(), line.engine()))));
        System.out.println("size engine branches mean-late over-record-% bound-of-plan-% (where late) worse-branches");
        groups.forEach((name, group) -> System.out.printf(
                Locale.ROOT,
                "%s %d %.1f %.1f %.1f %d%n",
                name,
                group.size(),
                group.stream().mapToLong(Line::late).average().orElse(0),
                group.stream()
                        .mapToDouble(line -> over(line.late(), best.get(line.branch())))
                        .average()
                        .orElse(0),
                group.stream()
                        .filter(line -> line.late() > 0)
                        .mapToDouble(line -> 100.0 * line.bound() / line.late())
                        .average()
                        .orElse(100),
                group.stream()
                        .filter(line -> lines.stream()
                                .anyMatch(other -> other.branch().equals(line.branch()) && other.late() < line.late()))
                        .count()));
    }

    private static double over(long late, String record) {
        long best = Long.parseLong(record.split(",")[0]);
        return 100.0 * (late - best) / Math.max(1, best);
    }
}
