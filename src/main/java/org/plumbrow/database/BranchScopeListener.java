package org.plumbrow.database;

import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.TransactionExecution;
import org.springframework.transaction.TransactionExecutionListener;

/** Hands the thread's scope to the database at the start of each transaction; it ends with the transaction. */
@Component
class BranchScopeListener implements TransactionExecutionListener {

    private final ObjectProvider<DataSource> dataSource;

    BranchScopeListener(ObjectProvider<DataSource> dataSource) {
        this.dataSource = dataSource;
    }

    @Override
    public void afterBegin(TransactionExecution transaction, @Nullable Throwable failure) {
        if (failure != null || !transaction.isNewTransaction()) {
            return;
        }
        BranchWall.Scope scope = BranchWall.current();
        new JdbcTemplate(dataSource.getObject())
                .queryForObject(
                        "select set_config('plumbrow.branches', ?, true) || set_config('plumbrow.scope', ?, true)",
                        String.class,
                        scope.branchList(),
                        scope.word());
    }
}
