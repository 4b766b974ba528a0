package org.plumbrow.database.server;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says why the database did not start in one paragraph instead of nine nested causes. */
class ServerUnusableAnalyzer extends AbstractFailureAnalyzer<ServerUnusable> {

    @Override
    protected FailureAnalysis analyze(Throwable root, ServerUnusable cause) {
        return new FailureAnalysis(cause.getMessage(), cause.remedy(), cause);
    }
}
