package org.plumbrow.branch.rate;

import java.util.List;
import java.util.Optional;
import org.plumbrow.branch.Written;
import org.plumbrow.web.Refusal;

/** A row of rates, fixed times or waits as typed. */
interface RowForm {

    /** What is wrong across its fields; each field by itself is in order. */
    Optional<Refusal> wrong();

    List<Written> written();
}
