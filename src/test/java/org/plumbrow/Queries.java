package org.plumbrow;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import net.ttddyy.dsproxy.ExecutionInfo;
import net.ttddyy.dsproxy.QueryInfo;
import net.ttddyy.dsproxy.listener.QueryExecutionListener;

/**
 * The statements that one piece of work sent to the database from this thread. Left out is what every request pays:
 * the scope of the wall and the web session's own rows.
 */
public final class Queries {

    private static final ThreadLocal<List<String>> HEARD = new ThreadLocal<>();

    private final List<String> statements;

    private Queries(List<String> statements) {
        this.statements = statements;
    }

    /** Work that may throw whatever a test may throw. */
    public interface Work {
        void run() throws Exception;
    }

    /** @return what was sent while the work ran */
    public static Queries during(Work work) {
        List<String> outer = HEARD.get();
        List<String> heard = new ArrayList<>();
        HEARD.set(heard);
        try {
            work.run();
        } catch (RuntimeException e) {
            throw e;
        } catch (Exception e) {
            throw new IllegalStateException(e);
        } finally {
            if (outer == null) {
                HEARD.remove();
            } else {
                outer.addAll(heard);
                HEARD.set(outer);
            }
        }
        return new Queries(List.copyOf(heard));
    }

    /** @return how many selects the work sent */
    public static int count(Work work) {
        return during(work).selects().size();
    }

    public List<String> selects() {
        return statements.stream().filter(Queries::isSelect).toList();
    }

    public List<String> all() {
        return statements;
    }

    private static boolean isSelect(String statement) {
        String start = statement.strip().toLowerCase(Locale.ROOT);
        return start.startsWith("select") || start.startsWith("with");
    }

    static final class Listener implements QueryExecutionListener {
        @Override
        public void beforeQuery(ExecutionInfo execution, List<QueryInfo> queries) {
            // only what was sent counts
        }

        @Override
        public void afterQuery(ExecutionInfo execution, List<QueryInfo> queries) {
            List<String> heard = HEARD.get();
            if (heard != null) {
                queries.stream()
                        .map(QueryInfo::getQuery)
                        .filter(Listener::belongsToTheWork)
                        .forEach(heard::add);
            }
        }

        private static boolean belongsToTheWork(String statement) {
            return !statement.startsWith("select set_config('plumbrow.")
                    && !statement.toUpperCase(Locale.ROOT).contains("SPRING_SESSION");
        }
    }
}
