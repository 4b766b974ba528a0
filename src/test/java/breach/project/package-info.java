@NullMarked
package breach.project;

import org.jspecify.annotations.NullMarked;
