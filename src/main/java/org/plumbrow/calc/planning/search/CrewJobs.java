package org.plumbrow.calc.planning.search;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Finds works that ask for the same, and crews that take equally long. */
final class CrewJobs {

    private final Map<IntBuffer, Integer> numbers = new HashMap<>();
    private final List<CrewJob> jobs = new ArrayList<>();
    private final Map<List<Object>, Team> teams = new HashMap<>();

    /** The number of what a work asks for. */
    int numberOf(Task task) {
        return numbers.computeIfAbsent(key(task), unknown -> {
            jobs.add(new CrewJob(task.crews, task.halfDays, task.inTheWeather, task.pools, task.pieces, teams(task)));
            return jobs.size() - 1;
        });
    }

    CrewJob[] jobs() {
        return jobs.toArray(CrewJob[]::new);
    }

    int teamCount() {
        return teams.size();
    }

    private static IntBuffer key(Task task) {
        return IntBuffer.allocate(2 + 2 * task.crews.length + 2 * task.pools.length)
                .put(task.inTheWeather ? 1 : 0)
                .put(task.crews.length)
                .put(task.crews)
                .put(task.halfDays)
                .put(task.pools)
                .put(task.pieces)
                .flip();
    }

    private Team[] teams(Task task) {
        Map<Integer, TreeMap<Integer, Long>> alike = new TreeMap<>();
        for (int choice = 0; choice < task.crews.length; choice++) {
            int crew = task.crews[choice];
            alike.computeIfAbsent(task.halfDays[choice], none -> new TreeMap<>())
                    .merge(crew >> 6, 1L << (crew & 63), (some, more) -> some | more);
        }
        List<Team> found = new ArrayList<>();
        alike.forEach((halfDays, words) ->
                words.forEach((word, crews) -> found.add(team(word, crews, halfDays, task.inTheWeather))));
        return found.toArray(Team[]::new);
    }

    private Team team(int word, long crews, int halfDays, boolean inTheWeather) {
        return teams.computeIfAbsent(
                List.of(word, crews, halfDays, inTheWeather),
                unknown -> new Team(teams.size(), word, crews, halfDays, inTheWeather));
    }
}
