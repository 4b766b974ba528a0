@NullMarked
package breach.calc;

import org.jspecify.annotations.NullMarked;
