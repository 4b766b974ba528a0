package org.plumbrow.calc.planning.search;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.plumbrow.calc.planning.search.CrewJob.Tolled;

/** Finds works that ask for the same, and crews that take equally long. */
final class CrewJobs {

    private final Map<IntBuffer, Integer> numbers = new HashMap<>();
    private final List<CrewJob> jobs = new ArrayList<>();
    private final Map<List<Object>, Team> teams = new HashMap<>();
    private final Tolls tolls;

    CrewJobs(Tolls tolls) {
        this.tolls = tolls;
    }

    /** The number of what a work asks for. */
    int numberOf(Task task) {
        int[] toll = tolls.of(task);
        return numbers.computeIfAbsent(key(task, toll), unknown -> {
            jobs.add(new CrewJob(
                    task.crews,
                    task.halfDays,
                    task.inTheWeather,
                    task.pools,
                    task.pieces,
                    teams(task),
                    tolled(task, toll)));
            return jobs.size() - 1;
        });
    }

    CrewJob[] jobs() {
        return jobs.toArray(CrewJob[]::new);
    }

    int teamCount() {
        return teams.size();
    }

    private static IntBuffer key(Task task, int[] toll) {
        return IntBuffer.allocate(2 + 3 * task.crews.length + 2 * task.pools.length)
                .put(task.inTheWeather ? 1 : 0)
                .put(task.crews.length)
                .put(task.crews)
                .put(task.halfDays)
                .put(toll)
                .put(task.pools)
                .put(task.pieces)
                .flip();
    }

    private Team[] teams(Task task) {
        return alike(task, new int[task.crews.length]).map(Tolled::team).toArray(Team[]::new);
    }

    private Tolled[] tolled(Task task, int[] toll) {
        return alike(task, toll).toArray(Tolled[]::new);
    }

    private record Alike(int toll, int halfDays, int word) {}

    private Stream<Tolled> alike(Task task, int[] toll) {
        Map<Alike, Long> alike = new TreeMap<>(Comparator.comparingInt(Alike::toll)
                .thenComparingInt(Alike::halfDays)
                .thenComparingInt(Alike::word));
        for (int choice = 0; choice < task.crews.length; choice++) {
            int crew = task.crews[choice];
            alike.merge(
                    new Alike(toll[choice], task.halfDays[choice], crew >> 6),
                    1L << (crew & 63),
                    (some, more) -> some | more);
        }
        return alike.entrySet().stream()
                .map(entry -> new Tolled(
                        team(entry.getKey().word, entry.getValue(), entry.getKey().halfDays, task.inTheWeather),
                        entry.getKey().toll));
    }

    private Team team(int word, long crews, int halfDays, boolean inTheWeather) {
        return teams.computeIfAbsent(
                List.of(word, crews, halfDays, inTheWeather),
                unknown -> new Team(teams.size(), word, crews, halfDays, inTheWeather));
    }
}
