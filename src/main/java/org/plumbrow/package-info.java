/** Plumbrow takes a solar job from signed contract to commissioned system; one package below this one is one room. */
@NullMarked
package org.plumbrow;

import org.jspecify.annotations.NullMarked;
