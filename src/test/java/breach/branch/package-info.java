@NullMarked
@ApplicationModule(allowedDependencies = {})
package breach.branch;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
