/** The catalogue of modules and inverters: generic ones of the program and the branch's own. */
@NullMarked
package org.plumbrow.design.equipment;

import org.jspecify.annotations.NullMarked;
